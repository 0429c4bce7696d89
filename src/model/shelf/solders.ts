import type { SourceKey } from '../../core/sources.ts';
import { atCelsius, cited, type ShelfEntry } from './entry.ts';

const lead = 'Holds lead: wash hands, no food beside it; trade rules restrict it in most new equipment.';

/** Soft solders by the designations of EN ISO 9453. The joint limit is for years, far below the melting point. */
export const solders: readonly ShelfEntry[] = [
  solder('Sn96.5Ag3Cu0.5', [58, 'solderTable', [55, 64]], [217, 'solderTable'], [125, 110, 150], ''),
  solder('Sn95.5Ag3.8Cu0.7', [60, 'solderTable', [55, 64]], [217, 'solderTable'], [125, 110, 150], ''),
  solder(
    'Sn99.3Cu0.7',
    [60, 'solderTable', [53, 66]],
    [227, 'solderTable'],
    [125, 110, 150],
    'Sources give 53 and 66 W/(m·K); the middle is taken.',
  ),
  solder('Sn96.5Ag3.5', [55, 'solderTable', [50, 64]], [221, 'solderTable'], [125, 110, 150], ''),
  solder('Sn63Pb37', [50, 'solderTable', [49, 52]], [183, 'solderTable'], [110, 95, 125], lead),
  solder('Sn60Pb40', [49, 'solderTable', [48, 52]], [183, 'solderTable'], [110, 95, 125], lead),
  solder('Sn62Pb36Ag2', [50, 'solderTable', [48, 52]], [179, 'solderTable'], [110, 95, 125], lead),
  solder(
    'Bi58Sn42',
    [19, 'materialHandbook', [18, 22]],
    [138, 'materialHandbook'],
    [85, 70, 100],
    'Brittle. Lead from old tinning makes it melt below 100 °C: only on lead-free terminals.',
  ),
  solder(
    'Sn95Sb5',
    [28, 'materialHandbook', [26, 46]],
    [235, 'materialHandbook'],
    [130, 110, 150],
    'Creeps little.',
  ),
  solder(
    'Pb93Sn5Ag2',
    [26, 'materialHandbook', [24, 44]],
    [296, 'materialHandbook'],
    [150, 130, 200],
    `For hot parts. ${lead}`,
  ),
];

function solder(
  name: string,
  k_WPerMK: readonly [value: number, source: SourceKey, scatter: readonly [number, number]],
  [solidus_degC, solidusSource]: readonly [number, SourceKey],
  [joint_degC, ...joints]: readonly [value: number, low: number, high: number],
  note: string,
): ShelfEntry {
  return {
    name,
    values: {
      solder_WPerMK: cited(...k_WPerMK),
      joint_K: atCelsius(joint_degC, 'commonPractice', joints),
    },
    solidus: atCelsius(solidus_degC, solidusSource, null),
    note,
  };
}
