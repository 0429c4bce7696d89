import { defineCard } from '../card.ts';

/**
 * Free convection between two vertical plates of one temperature, Elenbaas' own measured curve: the second opinion beside
 * the composite, from which it differs by at most 6 % for El from 1 to 1000.
 */
export function nusseltChannelElenbaas1942(elenbaas: number): number {
  const root = Math.sqrt(-Math.expm1(-35 / elenbaas));
  return (elenbaas / 24) * root * Math.sqrt(root);
}

export const card = defineCard({
  id: 'nusseltChannelElenbaas1942',
  title: 'Vertical channel, both sides warm (Elenbaas 1942)',
  equation: 'Nu_b = (El/24)·(1 − exp(−35/El))^(3/4)',
  result: { name: 'Nusselt number on the gap, heated area and entering air', unit: '1', symbol: 'Nu_b' },
  symbols: { elenbaas: 'El' },
  source: { key: 'elenbaas1942', where: 'fit through the measurements (from memory)' },
  range: { elenbaas: [0.1, 1e5] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.12, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom', 'longGroove'],
  example: {
    given: { elenbaas: 10 },
    printed: '0.40719',
    kind: 'worked again',
    where: 'separate computation of the same form',
  },
  evaluate: ({ elenbaas }) => nusseltChannelElenbaas1942(elenbaas),
});
