import { sources } from '../core/sources.ts';
import type { Design } from '../model/design.ts';
import { fieldAt } from '../model/fields.ts';
import { getAt, type Path } from '../model/path.ts';
import { sayQuantity, sayRange } from '../model/say.ts';
import type { Cited, OwnEntry, ShelfEntry } from '../model/shelf/entry.ts';
import { type KindId, kinds, pathsOf } from '../model/shelf/kinds.ts';
import { shelf } from '../model/shelf/shelf.ts';
import { isSame, type Named, standingOf } from '../model/shelf/standing.ts';
import type { UnitSystem } from './types.ts';
import { standingWords } from './wording.ts';
import { listed } from './words.ts';

/** One value of an entry beside the present one, in words. */
export interface ShelfValueRow {
  readonly key: string;
  readonly label: string;
  readonly value: string;
  /** What stands there now, where it is another. */
  readonly instead: string | null;
  /** How far others are from it, and where it comes from; empty for an entry of the reader's, which says it once. */
  readonly origin: string;
}

/** One entry on the shelf, in words, with what choosing it would change. */
export interface ShelfRow extends Named {
  readonly id: string;
  readonly own: OwnEntry | null;
  /** The values in one line. */
  readonly brief: string;
  readonly rows: readonly ShelfValueRow[];
  readonly note: string;
  /** One sentence: how much would change. */
  readonly effect: string;
  /** All that a search looks through, in small letters. */
  readonly search: string;
}

/** Everything on the shelf of one kind: the reader's own entries first, then those that come with the program. */
export function shelfRows(
  design: Design,
  kind: KindId,
  place: Path,
  own: readonly OwnEntry[],
  system: UnitSystem,
): ShelfRow[] {
  const of = (entry: Named, more: Pick<ShelfRow, 'id' | 'own' | 'note'>, origin: (key: string) => string) =>
    buildRow(design, kind, place, entry, more, origin, system);
  const mine = own
    .filter((entry) => entry.kind === kind)
    .map((entry) => of(entry, { id: entry.id, own: entry, note: ownNote(entry) }, () => ''));
  const builtIn = shelf[kind].map((entry) =>
    of(
      { name: entry.name, values: plainValues(entry) },
      { id: `built-in ${entry.name}`, own: null, note: noteOf(entry, system) },
      (key) => originOf(entry.values[key] as Cited, kind, key, place, system),
    ),
  );
  return [...mine, ...builtIn];
}

/** The rows in which every word of a search is found. */
export function foundRows(rows: readonly ShelfRow[], query: string): ShelfRow[] {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  return rows.filter(({ search }) => words.every((word) => search.includes(word)));
}

/** The row to look at first: the one that the inputs are like, by name and values, else by one of the two. */
export function firstChoice(rows: readonly ShelfRow[], design: Design, kind: KindId): ShelfRow | null {
  const isLike = (row: ShelfRow) => row.rows.every(({ instead }) => instead === null);
  const isNamed = (row: ShelfRow) => !renames(design, kind, row.name);
  return (
    rows.find((row) => isNamed(row) && isLike(row)) ??
    (kinds[kind].name === null ? undefined : rows.find(isNamed)) ??
    rows.find(isLike) ??
    rows[0] ??
    null
  );
}

/** How the present values stand to the shelf, in one sentence; empty where they have nothing to do with it. */
export function shelfStanding(
  design: Design,
  kind: KindId,
  place: Path,
  own: readonly OwnEntry[],
  system: UnitSystem,
): string {
  const entries: Named[] = [
    ...own.filter((entry) => entry.kind === kind),
    ...shelf[kind].map((entry) => ({ name: entry.name, values: plainValues(entry) })),
  ];
  const standing = standingOf(design, kind, place, entries);
  switch (standing.how) {
    case 'as': {
      const named = listed(standing.names.slice(0, 3).map((name) => `“${name}”`));
      return standing.named ? `As ${named} on the shelf.` : `The values of ${named} on the shelf.`;
    }
    case 'changed': {
      const entry = entries.find(({ name }) => name === standing.name);
      const there = pathsOf(kind, place)
        .filter(([key]) => standing.keys.includes(key))
        .map(([key, path]) => `${labelOf(path)} ${say(path, entry?.values[key] as number, system)}`);
      return `Changed from “${standing.name}” on the shelf: there ${listed(there)}.`;
    }
    case 'other':
      return '';
  }
}

function buildRow(
  design: Design,
  kind: KindId,
  place: Path,
  entry: Named,
  more: Pick<ShelfRow, 'id' | 'own' | 'note'>,
  origin: (key: string) => string,
  system: UnitSystem,
): ShelfRow {
  const rows = pathsOf(kind, place).map(([key, path]): ShelfValueRow => {
    const value = entry.values[key] as number;
    const present = getAt(design, path) as number;
    return {
      key,
      label: fieldAt(path).label,
      value: say(path, value, system),
      instead: isSame(value, present) ? null : say(path, present, system),
      origin: origin(key),
    };
  });
  const changes = rows.filter(({ instead }) => instead !== null).length;
  const brief = rows.map(({ value }) => value).join(' · ');
  return {
    ...entry,
    ...more,
    brief,
    rows,
    effect: effectOf(changes, rows.length, renames(design, kind, entry.name)),
    search: [entry.name, brief, more.note, ...rows.map((row) => row.origin)].join(' ').toLowerCase(),
  };
}

function renames(design: Design, kind: KindId, name: string): boolean {
  const { name: at } = kinds[kind];
  return at !== null && getAt(design, at) !== name;
}

function effectOf(changes: number, of: number, renamed: boolean): string {
  const name = renamed ? ' and the name' : '';
  if (changes === 0) return renamed ? 'Only the name would change.' : 'Nothing would change.';
  if (of === 1) return `The value${name} would change.`;
  if (changes === of) return `All ${of} values${name} would change.`;
  return `${changes} of ${of} values${name} would change.`;
}

function originOf(
  { source, scatter }: Cited,
  kind: KindId,
  key: string,
  place: Path,
  system: UnitSystem,
): string {
  const { cite, standing } = sources[source];
  const from = standing === 'practice' ? `${cite}.` : `${cite} (${standingWords[standing]}).`;
  if (scatter === null) return from;
  const path = pathsOf(kind, place).find(([each]) => each === key)?.[1] ?? '';
  const field = fieldAt(path);
  if (field.kind !== 'quantity') return from;
  return `Others ${sayRange(scatter, field.dimension, system)}. ${from}`;
}

function noteOf({ solidus, note }: ShelfEntry, system: UnitSystem): string {
  if (solidus === undefined) return note;
  return `Begins to melt at ${sayQuantity(solidus.value, 'temperature', system)}. ${note}`.trim();
}

function ownNote({ source, remark }: OwnEntry): string {
  return [source === '' ? 'No source given.' : `Source: ${source}`, remark].filter(Boolean).join(' · ');
}

function plainValues({ values }: ShelfEntry): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(values).map(([key, { value }]) => [key, value]));
}

function say(path: Path, value: number, system: UnitSystem): string {
  const field = fieldAt(path);
  return field.kind === 'quantity' ? sayQuantity(value, field.dimension, system) : String(value);
}

function labelOf(path: Path): string {
  const { label } = fieldAt(path);
  return label.charAt(0).toLowerCase() + label.slice(1);
}
