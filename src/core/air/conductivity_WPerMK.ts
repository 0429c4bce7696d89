import { defineCard } from '../card.ts';

/** Thermal conductivity of air, the form of the standard atmosphere. */
export function conductivity_WPerMK(T_K: number): number {
  return (2.64638e-3 * T_K * Math.sqrt(T_K)) / (T_K + 245.4 * Math.exp((-12 * Math.LN10) / T_K));
}

export const card = defineCard({
  id: 'conductivity',
  title: 'Thermal conductivity of air',
  equation: 'k = 2.64638·10⁻³·T^1.5/(T + 245.4·10^(−12/T))',
  result: { name: 'thermal conductivity', unit: 'W/(m·K)', symbol: 'k' },
  symbols: { T_K: 'T' },
  source: { key: 'ussa1976', where: 'thermal conductivity' },
  range: { T_K: [170, 600] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.02, from: 'memory' },
  assumes: ['dryIdealGas'],
  example: {
    given: { T_K: 300 },
    printed: '0.02625',
    kind: 'worked again',
    where: 'fluids 1.0.22, ATMOSPHERE_1976',
  },
  evaluate: ({ T_K }) => conductivity_WPerMK(T_K),
});
