import type { SourceKey } from '../../core/sources.ts';
import { cited, type ShelfEntry } from './entry.ts';

/** Metals of tabs and pins. */
export const tabs: readonly ShelfEntry[] = [
  tab('Copper Cu-ETP', 390, 'materialsDatabase', [380, 400], ''),
  tab('Copper with iron, CuFe2P', 260, 'materialHandbook', [220, 280], 'Lead frames and spring contacts.'),
  tab('Brass CuZn37', 116, 'copperData', [110, 125], ''),
  tab('Bronze CuSn6', 75, 'materialHandbook', [62, 80], 'Springs.'),
  tab('Nickel silver CuNi18Zn20', 33, 'materialHandbook', [28, 38], ''),
  tab('Nickel', 90, 'materialHandbook', [70, 92], 'Welds well; battery strip is often nickel-plated steel.'),
  tab('Steel, tinned', 55, 'materialHandbook', [45, 65], 'A magnet tells it from copper.'),
];

function tab(
  name: string,
  k_WPerMK: number,
  source: SourceKey,
  scatter: readonly [number, number],
  note: string,
): ShelfEntry {
  return { name, values: { tab_WPerMK: cited(k_WPerMK, source, scatter) }, note };
}
