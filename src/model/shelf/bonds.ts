import type { SourceKey } from '../../core/sources.ts';
import { atCelsius, cited, type ShelfEntry } from './entry.ts';

const noGlass =
  'A rubber has passed its glass transition long before: the service limit stands in its place.';
const shorts =
  'Conducts electricity: it shorts whatever it touches, and a spacer does not insulate it. Never under live parts.';

/** Adhesives by their kind. Makers differ by factors; a data sheet in hand is better than any of these. */
export const bonds: readonly ShelfEntry[] = [
  bond(
    'Filled epoxy',
    [1, 'petrieAdhesives', [0.5, 1.75]],
    [130, 120, 150],
    [90, 60, 120],
    'Cured warm, with alumina or the like. From half to three quarters of filler by weight it doubles.',
  ),
  bond(
    'Filled epoxy, cured at room temperature',
    [0.8, 'petrieAdhesives', [0.4, 1.2]],
    [100, 90, 120],
    [55, 40, 70],
    'Without heat its glass transition stays little above the room; a day at 60 °C raises both.',
  ),
  bond(
    'Epoxy without filler',
    [0.2, 'materialHandbook', [0.15, 0.25]],
    [110, 90, 130],
    [65, 45, 100],
    'An ordinary two-part glue.',
  ),
  bond(
    'Aluminium-filled epoxy',
    [1.7, 'petrieAdhesives', [1, 3.5]],
    [130, 120, 150],
    [80, 55, 110],
    'May conduct electricity: treat it as if it did.',
  ),
  bond('Silver epoxy', [2.5, 'petrieAdhesives', [1.7, 7]], [150, 125, 175], [80, 60, 120], shorts),
  bond(
    'Silicone adhesive, filled',
    [1, 'commonPractice', [0.6, 2]],
    [180, 150, 200],
    null,
    `Gives way as the parts expand; needs moist air to cure and takes days under a wide chip. ${noGlass}`,
  ),
  bond(
    'Silicone adhesive without filler',
    [0.2, 'commonPractice', [0.16, 0.25]],
    [180, 150, 200],
    null,
    `Kinds that smell of vinegar attack copper and brass. ${noGlass}`,
  ),
  bond(
    'Acrylic adhesive, filled',
    [0.8, 'commonPractice', [0.5, 1.2]],
    [120, 100, 150],
    [60, 40, 100],
    'With an activator, cured in minutes in thin lines.',
  ),
  bond(
    'Thermal tape',
    [0.6, 'commonPractice', [0.3, 1]],
    [100, 80, 120],
    null,
    `The tape sets the thickness: enter it in place of the filament. Creeps under a steady pull when warm. ${noGlass}`,
  ),
  bond(
    'Thermal grease',
    [1, 'commonPractice', [0.6, 4]],
    [150, 120, 180],
    null,
    'Holds nothing: the stack needs a clamp. Heat and cold pump it out over the years. It has no glass transition that matters: the service limit stands in its place.',
  ),
];

type Degrees = readonly [value_degC: number, low_degC: number, high_degC: number];

function bond(
  name: string,
  k_WPerMK: readonly [value: number, source: SourceKey, scatter: readonly [number, number]],
  service: Degrees,
  glass: Degrees | null,
  note: string,
): ShelfEntry {
  const [limit_degC, ...limits] = service;
  const [glass_degC, ...glasses] = glass ?? service;
  return {
    name,
    values: {
      sheetK_WPerMK: cited(...k_WPerMK),
      serviceLimit_K: atCelsius(limit_degC, 'commonPractice', limits),
      glassTransition_K: atCelsius(glass_degC, 'commonPractice', glasses),
    },
    note,
  };
}
