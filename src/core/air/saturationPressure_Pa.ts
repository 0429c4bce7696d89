import { defineCard } from '../card.ts';

/** Vapour pressure over water, Magnus form. */
export function saturationPressure_Pa(T_K: number): number {
  const t = T_K - 273.15;
  return 610.94 * Math.exp((17.625 * t) / (t + 243.04));
}

export const card = defineCard({
  id: 'saturationPressure',
  title: 'Vapour pressure over water',
  equation: 'p_s = 610.94·exp(17.625·t/(t + 243.04)); t = T − 273.15',
  result: { name: 'pressure', unit: 'Pa', symbol: 'p_s' },
  symbols: { T_K: 'T' },
  source: { key: 'alduchovEskridge1996', where: 'Magnus form' },
  range: { T_K: [233.15, 323.15] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.004, from: 'memory' },
  assumes: [],
  example: {
    given: { T_K: 298.15 },
    printed: '3161.7',
    kind: 'worked again',
    where: 'computed; steam tables give 3169 Pa (from memory)',
  },
  evaluate: ({ T_K }) => saturationPressure_Pa(T_K),
});
