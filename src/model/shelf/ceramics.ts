import type { SourceKey } from '../../core/sources.ts';
import { cited, type ShelfEntry } from './entry.ts';

/** Bodies of chip resistors: conductivity at about 25 °C, which falls by a quarter up to 100 °C in the pure ones. */
export const ceramics: readonly ShelfEntry[] = [
  ceramic(
    'Alumina 96 %',
    [25, 'materialHandbook', [20, 28]],
    [3.43e6, 'materialHandbook', [2.95e6, 3.75e6]],
    'The usual body of thick-film chips.',
  ),
  ceramic(
    'Alumina 99.5 %',
    [30, 'materialHandbook', [26, 36]],
    [3.4e6, 'materialHandbook', [2.95e6, 3.75e6]],
    'The usual body of thin-film chips.',
  ),
  ceramic(
    'Aluminium nitride',
    [170, 'microwaveEncyclopedia', [140, 200]],
    [2.67e6, 'microwaveEncyclopedia', [2.4e6, 2.75e6]],
    'For high power. Poorer grades go down to 80 W/(m·K).',
  ),
  ceramic(
    'Silicon nitride',
    [75, 'materialHandbook', [20, 90]],
    [2.2e6, 'materialHandbook', [2.1e6, 2.6e6]],
    'Substrate grade; grades for machine parts have 20 to 30 W/(m·K).',
  ),
  ceramic(
    'Beryllia 99.5 %',
    [260, 'materialHandbook', [230, 300]],
    [2.95e6, 'materialHandbook', [2.85e6, 3.2e6]],
    'In old power parts. Its dust is deadly to lungs: never grind, break or sand it, and hand it in as dangerous waste.',
  ),
  ceramic(
    'Steatite',
    [2.5, 'materialHandbook', [2, 3.5]],
    [2.4e6, 'materialHandbook', [2.2e6, 2.7e6]],
    'Bodies of wire-wound parts.',
  ),
];

type Figures = readonly [value: number, source: SourceKey, scatter: readonly [number, number]];

function ceramic(name: string, k_WPerMK: Figures, heat_JPerM3K: Figures, note: string): ShelfEntry {
  return {
    name,
    values: { ceramic_WPerMK: cited(...k_WPerMK), ceramicHeat_JPerM3K: cited(...heat_JPerM3K) },
    note,
  };
}
