import type { SourceKey } from '../../core/sources.ts';
import { cited, type ShelfEntry } from './entry.ts';

/** Metals that sinks are made of: conductivity at about 25 °C, and density times specific heat. */
export const alloys: readonly ShelfEntry[] = [
  alloy(
    'Aluminium EN AW-6063',
    [200, 'aluminumAssociation', [193, 218]],
    [2.42e6, 'aluminumAssociation', [2.4e6, 2.45e6]],
    'The usual alloy of extruded sinks. Temper T6 200, T5 209, soft 218 W/(m·K).',
  ),
  alloy(
    'Aluminium EN AW-6060',
    [200, 'wroughtProfiles', [200, 220]],
    [2.4e6, 'wroughtProfiles', [2.38e6, 2.44e6]],
    'Close to 6063; the lower end of the range is taken.',
  ),
  alloy(
    'Aluminium EN AW-6061',
    [167, 'aluminumAssociation', [152, 180]],
    [2.42e6, 'aluminumAssociation', [2.4e6, 2.45e6]],
    'Temper T6, the usual bar and plate for milling. T4 about 155, soft 180 W/(m·K).',
  ),
  alloy(
    'Aluminium EN AW-6082',
    [170, 'wroughtProfiles', [170, 220]],
    [2.42e6, 'materialHandbook', [2.38e6, 2.45e6]],
    'The usual bar in Europe. Wide range; the lower end is taken.',
  ),
  alloy(
    'Aluminium EN AW-1050A',
    [229, 'materialHandbook', [220, 235]],
    [2.43e6, 'materialHandbook', [2.4e6, 2.45e6]],
    'Nearly pure and soft: folded and skived fins, sheet.',
  ),
  alloy(
    'Aluminium EN AW-5083',
    [117, 'aluminumAssociation', [109, 127]],
    [2.39e6, 'aluminumAssociation', [2.36e6, 2.42e6]],
    'Cast tooling plate is often of this kind: little more than half the conductivity of 6063.',
  ),
  alloy(
    'Cast aluminium EN AC-44300',
    [130, 'materialsDatabase', [120, 160]],
    [2.35e6, 'materialsDatabase', [2.25e6, 2.4e6]],
    'Die casting, AlSi12(Fe); values of the sister alloy EN AC-44100. Pores and rapid cooling lower it.',
  ),
  alloy(
    'Cast aluminium EN AC-46000',
    [110, 'materialHandbook', [96, 120]],
    [2.42e6, 'materialHandbook', [2.35e6, 2.5e6]],
    'Die casting, AlSi9Cu3(Fe), the commonest of foundries.',
  ),
  alloy(
    'Copper Cu-ETP',
    [390, 'materialsDatabase', [380, 400]],
    [3.45e6, 'materialsDatabase', [3.4e6, 3.52e6]],
    'More than three times the weight of aluminium.',
  ),
  alloy(
    'Brass CuZn37',
    [116, 'copperData', [110, 125]],
    [3.19e6, 'copperData', [3.1e6, 3.25e6]],
    'Easy to solder and to mill.',
  ),
];

type Figures = readonly [value: number, source: SourceKey, scatter: readonly [number, number]];

function alloy(name: string, k_WPerMK: Figures, heat_JPerM3K: Figures, note: string): ShelfEntry {
  return { name, values: { k_WPerMK: cited(...k_WPerMK), heat_JPerM3K: cited(...heat_JPerM3K) }, note };
}
