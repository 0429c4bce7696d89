import { type Source, sources } from '../core/sources.ts';
import type { Design } from '../model/design.ts';
import { fieldAt } from '../model/fields.ts';
import { getAt, type Path } from '../model/path.ts';
import { sayQuantity, sayRange } from '../model/say.ts';
import type { Cited, OwnEntry, ShelfEntry } from '../model/shelf/entry.ts';
import { type KindId, kinds, pathsOf } from '../model/shelf/kinds.ts';
import { shelf } from '../model/shelf/shelf.ts';
import { isSame, type Named, standingOf } from '../model/shelf/standing.ts';
import type { UnitSystem } from './types.ts';
import { capital, listed } from './words.ts';

/** One value of an entry beside the present one, in words. */
export interface ShelfValueRow {
  readonly key: string;
  readonly label: string;
  readonly value: string;
  /** What stands there now, where it is another. */
  readonly instead: string | null;
  /** How far other samples and sources are from it; empty where that is not known. */
  readonly scatter: string;
}

/** One entry on the shelf, in words, with what choosing it would change. */
export interface ShelfRow extends Named {
  readonly id: string;
  readonly own: OwnEntry | null;
  /** The values in one line. */
  readonly brief: string;
  readonly rows: readonly ShelfValueRow[];
  readonly note: string;
  /** Where the values come from, each source once. */
  readonly sources: readonly string[];
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
  const here = { design, kind, place, system };
  const mine = own
    .filter((entry) => entry.kind === kind)
    .map((entry) =>
      buildRow(
        here,
        entry,
        {},
        { id: entry.id, own: entry, note: entry.remark, sources: [ownSource(entry)] },
      ),
    );
  const builtIn = shelf[kind].map((entry) =>
    buildRow(here, { name: entry.name, values: plainValues(entry) }, entry.values, {
      id: `built-in ${entry.name}`,
      own: null,
      note: noteOf(entry, system),
      sources: sourcesOf(entry, kind, place),
    }),
  );
  return [...mine, ...builtIn];
}

/** The rows in which every word of a search is found; those with all of them in the name first. */
export function foundRows(rows: readonly ShelfRow[], query: string): readonly ShelfRow[] {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return rows;
  const has = (text: string) => words.every((word) => text.includes(word));
  const found = rows.filter(({ search }) => has(search));
  const byName = (row: ShelfRow) => has(row.name.toLowerCase());
  return [...found.filter(byName), ...found.filter((row) => !byName(row))];
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
      return `Changed from “${standing.name}” on the shelf: ${listed(there)} there.`;
    }
    case 'other':
      return '';
  }
}

interface Here {
  readonly design: Design;
  readonly kind: KindId;
  readonly place: Path;
  readonly system: UnitSystem;
}

function buildRow(
  { design, kind, place, system }: Here,
  entry: Named,
  values: Readonly<Record<string, Cited>>,
  more: Pick<ShelfRow, 'id' | 'own' | 'note' | 'sources'>,
): ShelfRow {
  const rows = pathsOf(kind, place).map(([key, path]): ShelfValueRow => {
    const value = entry.values[key] as number;
    const present = getAt(design, path) as number;
    return {
      key,
      label: fieldAt(path).label,
      value: say(path, value, system),
      instead: isSame(value, present) ? null : say(path, present, system),
      scatter: sayScatter(path, values[key]?.scatter ?? null, system),
    };
  });
  const changes = rows.filter(({ instead }) => instead !== null).length;
  const brief = rows.map(({ value }) => value).join(' · ');
  return {
    name: entry.name,
    values: entry.values,
    ...more,
    brief,
    rows,
    effect: effectOf(changes, rows.length, renames(design, kind, entry.name)),
    search: [entry.name, brief, more.note, ...more.sources].join(' ').toLowerCase(),
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

/** How far the authors of this shelf were from the source; a citation that was read needs no word. */
const standings: Readonly<Record<Source['standing'], string>> = {
  read: '',
  through: ', seen at second hand',
  memory: ', from memory',
  computed: ', our own computation',
  practice: '',
};

/** Each source once, with the values that come from it where there are several. */
function sourcesOf({ values }: ShelfEntry, kind: KindId, place: Path): string[] {
  const paths = pathsOf(kind, place);
  const keys = [...new Set(paths.flatMap(([key]) => values[key]?.source ?? []))];
  return keys.map((source) => {
    const { cite, standing } = sources[source];
    const said = `${cite}${standings[standing]}.`;
    if (keys.length === 1) return said;
    const labels = paths.filter(([key]) => values[key]?.source === source).map(([, path]) => labelOf(path));
    return `${capital(listed(labels))}: ${said}`;
  });
}

function sayScatter(path: Path, scatter: Cited['scatter'], system: UnitSystem): string {
  const field = fieldAt(path);
  if (scatter === null || field.kind !== 'quantity') return '';
  return `elsewhere ${sayRange(scatter, field.dimension, system)}`;
}

function noteOf({ solidus, note }: ShelfEntry, system: UnitSystem): string {
  if (solidus === undefined) return note;
  return `Begins to melt at ${sayQuantity(solidus.value, 'temperature', system)}. ${note}`.trim();
}

function ownSource({ source }: OwnEntry): string {
  return source === '' ? 'No source given.' : source;
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
