import type { Path } from '../path.ts';

/** What stands on the shelf, and which inputs one entry of each kind sets. */
export type KindId =
  | 'alloy'
  | 'finish'
  | 'bond'
  | 'filament'
  | 'sheet'
  | 'thickness'
  | 'chip'
  | 'ceramic'
  | 'solder'
  | 'tab';

export interface Kind {
  readonly title: string;
  /** One of them, with its article. */
  readonly one: string;
  /** The text that carries the entry's name; `null` where the design has none. */
  readonly name: Path | null;
  /** The numbers; a path that begins with a full stop is within the place that is asked for. */
  readonly numbers: readonly Path[];
}

export const kinds: Readonly<Record<KindId, Kind>> = {
  alloy: {
    title: 'Alloys',
    one: 'an alloy',
    name: 'sink.material',
    numbers: ['sink.k_WPerMK', 'sink.heat_JPerM3K'],
  },
  finish: { title: 'Finishes of metal', one: 'a finish', name: null, numbers: ['sink.emissivity'] },
  bond: {
    title: 'Bond materials',
    one: 'a bond material',
    name: 'bond.material',
    numbers: ['bond.sheetK_WPerMK', 'bond.serviceLimit_K', 'bond.glassTransition_K'],
  },
  filament: {
    title: 'Spacer filaments',
    one: 'a filament',
    name: null,
    numbers: ['bond.filament_m', 'bond.filament_WPerMK'],
  },
  sheet: {
    title: 'Sheet materials',
    one: 'a sheet material',
    name: 'box.material',
    numbers: ['box.sheet_WPerMK', 'box.sheetEmissivity', 'box.sheetHeat_JPerM3K', 'box.softening_K'],
  },
  thickness: { title: 'Stock thicknesses', one: 'a thickness', name: null, numbers: ['.sheet_m'] },
  chip: {
    title: 'Chip sizes',
    one: 'a chip size',
    name: null,
    numbers: ['.length_m', '.width_m', '.thickness_m'],
  },
  ceramic: {
    title: 'Ceramics',
    one: 'a ceramic',
    name: null,
    numbers: ['.ceramic_WPerMK', '.ceramicHeat_JPerM3K'],
  },
  solder: {
    title: 'Solders',
    one: 'a solder',
    name: null,
    numbers: ['secondFace.solder_WPerMK', 'limits.joint_K'],
  },
  tab: { title: 'Metals for tabs', one: 'a metal', name: null, numbers: ['secondFace.tab_WPerMK'] },
};

export const kindIds = Object.keys(kinds) as KindId[];

/** The name of a number within an entry: the last key of its path, which carries the unit. */
export function keyOf(path: Path): string {
  return path.slice(path.lastIndexOf('.') + 1);
}

/** Where the numbers of an entry go, by their keys. `place`: the part that a kind belongs to, as `baffle` or `parts[1]`. */
export function pathsOf(kind: KindId, place: Path): readonly (readonly [key: string, path: Path])[] {
  return kinds[kind].numbers.map((path) => [keyOf(path), path.startsWith('.') ? place + path : path]);
}

/** A place at which a kind may stand, to read limits and labels from where no place is chosen. */
export function anyPlaceOf(kind: KindId): Path {
  return kind === 'thickness' ? 'box' : 'parts[0]';
}
