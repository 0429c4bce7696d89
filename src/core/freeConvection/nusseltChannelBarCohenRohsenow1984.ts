import { defineCard } from '../card.ts';

/**
 * Free convection between two vertical plates of one temperature, by joining the limits of a narrow channel (the air
 * leaves at wall temperature) and of two single plates. The driving difference is wall minus entering air.
 * Short real arrays with air coming in from the side differ by a quarter.
 */
export function nusseltChannelBarCohenRohsenow1984(elenbaas: number): number {
  return elenbaas / Math.sqrt(576 + 2.873 * elenbaas * Math.sqrt(elenbaas));
}

export const card = defineCard({
  id: 'nusseltChannelBarCohenRohsenow1984',
  title: 'Vertical channel, both sides warm (Bar-Cohen & Rohsenow 1984)',
  equation: 'Nu_b = (576/El² + 2.873/√El)^(−1/2)',
  result: { name: 'Nusselt number on the gap, heated area and entering air', unit: '1', symbol: 'Nu_b' },
  symbols: { elenbaas: 'El' },
  source: { key: 'barCohenRohsenow1984', where: 'isothermal plates, symmetric' },
  range: { elenbaas: [0.1, 1e5] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.12, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom', 'longGroove'],
  example: {
    given: { elenbaas: 10 },
    printed: '0.38724',
    kind: 'worked again',
    where: 'separate computation of the same form',
  },
  evaluate: ({ elenbaas }) => nusseltChannelBarCohenRohsenow1984(elenbaas),
});
