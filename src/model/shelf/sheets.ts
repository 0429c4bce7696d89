import type { SourceKey } from '../../core/sources.ts';
import { atCelsius, cited, type ShelfEntry } from './entry.ts';

const dull = [0.9, 'materialHandbook', [0.85, 0.95]] as const;

/** What boxes are cut from. The temperature a sheet may have is for a wall that carries a little and must keep its shape. */
export const sheets: readonly ShelfEntry[] = [
  sheet(
    'ABS',
    [0.18, 'materialHandbook', [0.17, 0.25]],
    dull,
    [1.47e6, 'materialHandbook', [1.35e6, 1.6e6]],
    [80, 'commonPractice', [70, 89]],
    'Burns with black smoke; grades marked as flame-retardant exist.',
  ),
  sheet(
    'Cast acrylic (PMMA)',
    [0.19, 'materialHandbook', [0.17, 0.21]],
    dull,
    [1.77e6, 'crawford1998', [1.7e6, 1.8e6]],
    [70, 'commonPractice', [50, 85]],
    'Burns readily and drips. Cracks at sharp inner corners and under solvent when stressed.',
  ),
  sheet(
    'Polycarbonate',
    [0.2, 'crawford1998', [0.19, 0.22]],
    dull,
    [1.44e6, 'materialHandbook', [1.38e6, 1.56e6]],
    [120, 'commonPractice', [115, 135]],
    'The warmest of the common clear sheets. Many solvents craze it.',
  ),
  sheet(
    'PETG',
    [0.21, 'materialHandbook', [0.19, 0.29]],
    dull,
    [1.56e6, 'materialsDatabase', [1.5e6, 1.6e6]],
    [65, 'commonPractice', [60, 71]],
    'Softens early: its deflection temperature under load is about 70 °C.',
  ),
  sheet(
    'Polypropylene',
    [0.2, 'crawford1998', [0.12, 0.22]],
    dull,
    [1.81e6, 'crawford1998', [1.6e6, 1.85e6]],
    [90, 'commonPractice', [80, 100]],
    'Hardly any glue holds it: weld or screw.',
  ),
  sheet(
    'Rigid PVC',
    [0.16, 'crawford1998', [0.14, 0.19]],
    dull,
    [1.26e6, 'crawford1998', [1.2e6, 1.45e6]],
    [60, 'commonPractice', [50, 66]],
    'Gives off hydrogen chloride when overheated: never cut it by laser.',
  ),
  sheet(
    'Polystyrene, impact-modified',
    [0.16, 'materialHandbook', [0.15, 0.18]],
    dull,
    [1.37e6, 'crawford1998', [1.3e6, 1.5e6]],
    [65, 'commonPractice', [50, 80]],
    'Burns readily with black smoke.',
  ),
  sheet(
    'FR-4 glass laminate',
    [0.34, 'sarvar1990', [0.25, 0.6]],
    dull,
    [1.85e6, 'nistCryogenics', [1.6e6, 2.1e6]],
    [120, 'commonPractice', [110, 140]],
    'Through the sheet; along it about 1.1 W/(m·K). Its dust harms lungs and skin: cut it wet or with suction, wear a mask.',
  ),
  sheet(
    'Birch plywood',
    [0.17, 'iso10456', [0.11, 0.2]],
    dull,
    [1.1e6, 'iso10456', [0.9e6, 1.3e6]],
    [80, 'commonPractice', [66, 90]],
    'Wood kept hot for months chars far below its ignition: keep well under 80 °C, and never without a thermal cut-out.',
  ),
  sheet(
    'Aluminium sheet EN AW-5754',
    [140, 'materialHandbook', [125, 155]],
    [0.09, 'thome2008', [0.05, 0.15]],
    [2.39e6, 'materialHandbook', [2.35e6, 2.45e6]],
    [150, 'commonPractice', [120, 200]],
    'Does not soften; the limit is that of paint and seams. Metal burns fingers at lower temperatures than plastic: lower the limit for the outside. Earth it where local codes ask for it.',
  ),
  sheet(
    'Steel sheet, zinc-coated',
    [50, 'materialHandbook', [45, 60]],
    [0.25, 'materialHandbook', [0.07, 0.3]],
    [3.7e6, 'materialHandbook', [3.5e6, 3.9e6]],
    [150, 'commonPractice', [120, 200]],
    'Does not soften; the limit is that of paint and seams. Metal burns fingers at lower temperatures than plastic: lower the limit for the outside. Earth it where local codes ask for it.',
  ),
];

type Figures = readonly [value: number, source: SourceKey, scatter: readonly [number, number]];

function sheet(
  name: string,
  k_WPerMK: Figures,
  emissivity: Figures,
  heat_JPerM3K: Figures,
  mayHave_degC: Figures,
  note: string,
): ShelfEntry {
  return {
    name,
    values: {
      sheet_WPerMK: cited(...k_WPerMK),
      sheetEmissivity: cited(...emissivity),
      sheetHeat_JPerM3K: cited(...heat_JPerM3K),
      softening_K: atCelsius(...mayHave_degC),
    },
    note,
  };
}
