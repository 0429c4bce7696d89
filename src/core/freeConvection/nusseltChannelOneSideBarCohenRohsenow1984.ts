import { defineCard } from '../card.ts';

/**
 * Free convection in a vertical channel with one warm wall and one that takes no heat, on the warm area.
 * The driving difference is wall minus entering air.
 */
export function nusseltChannelOneSideBarCohenRohsenow1984(elenbaas: number): number {
  return elenbaas / Math.sqrt(144 + 2.873 * elenbaas * Math.sqrt(elenbaas));
}

export const card = defineCard({
  id: 'nusseltChannelOneSideBarCohenRohsenow1984',
  title: 'Vertical channel, one side warm (Bar-Cohen & Rohsenow 1984)',
  equation: 'Nu_b = (144/El² + 2.873/√El)^(−1/2)',
  result: { name: 'Nusselt number on the gap, heated area and entering air', unit: '1', symbol: 'Nu_b' },
  symbols: { elenbaas: 'El' },
  source: { key: 'barCohenRohsenow1984', where: 'isothermal plate beside an insulated one (from memory)' },
  range: { elenbaas: [0.1, 1e5] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.12, from: 'memory' },
  assumes: ['isothermalPlate', 'stillRoom', 'longGroove'],
  example: {
    given: { elenbaas: 10 },
    printed: '0.65253',
    kind: 'worked again',
    where: 'separate computation of the same form',
  },
  evaluate: ({ elenbaas }) => nusseltChannelOneSideBarCohenRohsenow1984(elenbaas),
});
