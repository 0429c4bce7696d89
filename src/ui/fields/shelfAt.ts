import type { KindId } from '../../model/shelf/kinds.ts';

/** After which inputs the way to the shelf stands, and to which of its kinds. */
export const shelfAt: Readonly<Record<string, KindId>> = {
  'sink.material': 'alloy',
  'sink.emissivity': 'finish',
  'bond.material': 'bond',
  'bond.filament_WPerMK': 'filament',
  'box.sheet_m': 'thickness',
  'box.material': 'sheet',
  'baffle.sheet_m': 'thickness',
  'secondFace.tab_WPerMK': 'tab',
  'secondFace.solder_WPerMK': 'solder',
};
