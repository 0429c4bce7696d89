import type { Design } from '../../model/design.ts';
import type { ShelfEntry } from '../../model/shelf/entry.ts';
import { shelf } from '../../model/shelf/shelf.ts';
import { writesOf } from '../../model/shelf/standing.ts';
import type { Change, ChangeKey } from './change.ts';
import { rounded, thinnestLine_m } from './practice.ts';

/** Adhesives of the shelf that insulate: a bond under a live film may be nothing else. */
export const insulatingAdhesives: readonly string[] = ['Filled epoxy', 'Silicone adhesive, filled'];

/** Glass and wire conduct better than this; only plastic line may take the place of any other without a thought. */
const plasticLine_WPerMK = 1;

/** What can be done about bond lines and the second face. */
export function bondChanges(design: Design): Change[] {
  return [...lineChanges(design), ...adhesiveChanges(design), ...faceChanges(design)];
}

function lineChanges({ bond }: Design): Change[] {
  const sold_m = shelf.filament
    .filter(({ values }) => (values.filament_WPerMK?.value ?? 1) < plasticLine_WPerMK)
    .map(({ values }) => values.filament_m?.value ?? 0);
  const thinner_m = Math.max(
    ...sold_m.filter((each_m) => each_m < 0.95 * bond.filament_m && each_m >= thinnestLine_m),
  );
  const line = (key: ChangeKey, filament_m: number): Change => ({
    key,
    values: { 'bond.filament_m': filament_m },
    costs: ['buy', 'assemble'],
  });
  return [
    ...(Number.isFinite(thinner_m) ? [line('filamentThinner', thinner_m)] : []),
    ...(thinner_m > 1.05 * thinnestLine_m ? [line('filamentThinnest', thinnestLine_m)] : []),
    ...(bond.voidShare > 0.005
      ? [
          {
            key: 'voidsHalved',
            values: { 'bond.voidShare': rounded(bond.voidShare / 2, 1e-3) },
            costs: ['assemble'],
          } as const,
        ]
      : []),
  ];
}

/** Entries of the shelf with more conductivity, or with as much and more heat borne. */
function adhesiveChanges({ bond }: Design): Change[] {
  const entries = insulatingAdhesives.flatMap((name) => shelf.bond.filter((entry) => entry.name === name));
  const k = (entry: ShelfEntry | undefined) => entry?.values.sheetK_WPerMK?.value ?? 0;
  const change = (key: ChangeKey, entry: ShelfEntry | undefined): Change[] =>
    entry === undefined
      ? []
      : [{ key, values: writesOf('bond', 'bond', { ...entry, values: numbersOf(entry) }), costs: ['buy'] }];
  const best = entries.reduce<ShelfEntry | undefined>((a, b) => (k(b) > k(a) ? b : a), undefined);
  const better = k(best) > 1.05 * bond.sheetK_WPerMK ? best : undefined;
  const hotter = entries.find(
    (entry) =>
      entry !== better &&
      k(entry) >= 0.95 * bond.sheetK_WPerMK &&
      (entry.values.serviceLimit_K?.value ?? 0) > bond.serviceLimit_K + 5,
  );
  return [...change('adhesiveBetter', better), ...change('adhesiveHotter', hotter)];
}

function numbersOf({ values }: ShelfEntry): Record<string, number> {
  return Object.fromEntries(Object.entries(values).map(([key, { value }]) => [key, value]));
}

function faceChanges({ secondFace: face }: Design): Change[] {
  const assemble = (key: ChangeKey, values: Change['values']): Change => ({
    key,
    values,
    costs: ['assemble'],
  });
  return [
    ...(face.way === 'bonded' ? [] : [assemble('secondBonded', { 'secondFace.way': 'bonded' })]),
    ...(face.way === 'free'
      ? [{ ...assemble('secondTabs', { 'secondFace.way': 'tabs' }), costs: ['buy', 'assemble'] as const }]
      : []),
    ...(face.way === 'tabs'
      ? [
          {
            key: 'tabsThicker',
            values: { 'secondFace.tabThickness_m': 2 * face.tabThickness_m },
            costs: ['buy'],
          } as const,
        ]
      : []),
    ...(face.way === 'tabs' && face.tabLength_m > 5e-4
      ? [assemble('tabsShorter', { 'secondFace.tabLength_m': face.tabLength_m / 2 })]
      : []),
  ];
}
