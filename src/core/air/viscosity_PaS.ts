import { defineCard } from '../card.ts';

/** Dynamic viscosity of air, Sutherland's form with the constants of the standard atmosphere. */
export function viscosity_PaS(T_K: number): number {
  return (1.458e-6 * T_K * Math.sqrt(T_K)) / (T_K + 110.4);
}

export const card = defineCard({
  id: 'viscosity',
  title: 'Viscosity of air',
  equation: 'μ = 1.458·10⁻⁶·T^1.5/(T + 110.4)',
  result: { name: 'dynamic viscosity', unit: 'Pa·s', symbol: 'μ' },
  symbols: { T_K: 'T' },
  source: { key: 'ussa1976', where: 'Sutherland viscosity' },
  range: { T_K: [170, 600] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.01, from: 'memory' },
  assumes: ['dryIdealGas'],
  example: {
    given: { T_K: 300 },
    printed: '1.8460e-5',
    kind: 'worked again',
    where: 'fluids 1.0.22, ATMOSPHERE_1976',
  },
  evaluate: ({ T_K }) => viscosity_PaS(T_K),
});
