import { defineCard } from '../card.ts';

/** Elenbaas number of a vertical channel: the Rayleigh number on the gap, shortened by gap over height. */
export function elenbaas(rayleighGap: number, gap_m: number, height_m: number): number {
  return (rayleighGap * gap_m) / height_m;
}

export const card = defineCard({
  id: 'elenbaas',
  title: 'Elenbaas number',
  equation: 'El = Ra_b·b/L',
  result: { name: 'Elenbaas number', unit: '1', symbol: 'El' },
  symbols: { rayleighGap: 'Ra_b', gap_m: 'b', height_m: 'L' },
  source: { key: 'elenbaas1942', where: 'definition' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: [],
  example: {
    given: { rayleighGap: 200, gap_m: 4e-3, height_m: 50e-3 },
    printed: '16',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ rayleighGap, gap_m, height_m }) => elenbaas(rayleighGap, gap_m, height_m),
});
