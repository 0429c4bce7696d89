import { defineCard } from '../card.ts';

/** Specific gas constant of dry air. */
export const gasConstant_JPerKgK = 287.053;

/** Density of dry air as an ideal gas. */
export function density_kgPerM3(T_K: number, p_Pa: number): number {
  return p_Pa / (gasConstant_JPerKgK * T_K);
}

export const card = defineCard({
  id: 'density',
  title: 'Density of dry air',
  equation: 'ρ_d = p/(R·T)',
  result: { name: 'density', unit: 'kg/m³', symbol: 'ρ_d' },
  symbols: { T_K: 'T', p_Pa: 'p' },
  constants: [{ symbol: 'R', says: 'gas constant of dry air', value: gasConstant_JPerKgK, unit: 'J/(kg·K)' }],
  source: { key: 'iso2533', where: 'ideal gas, R of dry air' },
  range: { T_K: [170, 600] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.001, from: 'memory' },
  assumes: ['dryIdealGas'],
  example: {
    given: { T_K: 300, p_Pa: 101325 },
    printed: '1.1766',
    kind: 'worked again',
    where: 'fluids 1.0.22 (ideal gas)',
  },
  evaluate: ({ T_K, p_Pa }) => density_kgPerM3(T_K, p_Pa),
});
