import type { SourceKey } from '../../core/sources.ts';
import { cited, type ShelfEntry } from './entry.ts';

const line = 'The diameter of line is nominal: measure it, ±10 % is usual.';
const metal =
  'Conducts electricity: it bridges the two faces and insulates nothing. Only where both are at one potential.';

/** Thread that keeps a bond line open, by material and by the diameters it is sold in. */
export const filaments: readonly ShelfEntry[] = [
  ...threads(
    'Nylon (PA 6)',
    [0.25, 'materialHandbook', [0.23, 0.28]],
    [0.1, 0.12, 0.15, 0.18, 0.2, 0.25, 0.3],
    line,
  ),
  ...threads('Polyester (PET)', [0.2, 'crawford1998', [0.15, 0.24]], [0.1, 0.12, 0.15, 0.2, 0.25, 0.3], line),
  ...threads(
    'Fluorocarbon (PVDF)',
    [0.19, 'materialHandbook', [0.17, 0.2]],
    [0.1, 0.12, 0.15, 0.18, 0.2, 0.25, 0.3],
    line,
  ),
  ...threads(
    'Fused silica fibre',
    [1.35, 'crcGlasses', [1.3, 1.5]],
    [0.08, 0.125],
    'Bare light guide: its diameter is true to a micrometre. Strip the plastic coat. Splinters pierce skin and eyes: wear glasses, collect the ends.',
  ),
  ...threads('Stainless steel wire', [15, 'materialHandbook', [14, 16.5]], [0.1, 0.15, 0.2, 0.25], metal),
];

function threads(
  material: string,
  k_WPerMK: readonly [value: number, source: SourceKey, scatter: readonly [number, number]],
  diameters_mm: readonly number[],
  note: string,
): ShelfEntry[] {
  return diameters_mm.map((diameter_mm) => ({
    name: `${material}, ${diameter_mm} mm`,
    values: {
      filament_m: cited(Number((diameter_mm / 1000).toPrecision(6)), 'commonPractice', null),
      filament_WPerMK: cited(...k_WPerMK),
    },
    note,
  }));
}
