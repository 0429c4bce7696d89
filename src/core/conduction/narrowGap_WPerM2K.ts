import { defineCard } from '../card.ts';

/**
 * From one wall of a narrow gap to the air in the middle of it: half of the gap, by conduction. Exact for still air and for
 * developed laminar flow between walls of two temperatures; air that has just come in, or that turns over in a wide gap, takes
 * more.
 */
export function narrowGap_WPerM2K(k_WPerMK: number, gap_m: number): number {
  return (2 * k_WPerMK) / gap_m;
}

export const card = defineCard({
  id: 'narrowGap',
  title: 'Air in a narrow gap beside the sinks',
  equation: 'h = 2·k/b; from each wall to the air between',
  result: { name: 'heat transfer coefficient', unit: 'W/(m²·K)', symbol: 'h' },
  symbols: { k_WPerMK: 'k', gap_m: 'b' },
  source: {
    key: 'incropera',
    where: 'ch. 3, plane layer; Nu = 4 of laminar flow between walls of two temperatures',
  },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.2, from: 'common practice' },
  assumes: ['gapAirMixed', 'steady'],
  example: {
    given: { k_WPerMK: 0.026, gap_m: 0.8e-3 },
    printed: '65',
    kind: 'worked again',
    where: 'worked by hand',
  },
  evaluate: ({ k_WPerMK, gap_m }) => narrowGap_WPerM2K(k_WPerMK, gap_m),
});
