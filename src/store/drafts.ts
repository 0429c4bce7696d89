import type { Path } from '../model/path.ts';

/** A text as typed. It stays while it is wrong, and it stays when it is right: nobody's 1/16 in becomes 1.5875 mm. */
export interface Draft {
  readonly text: string;
  /** One sentence on what is wrong with it and what is allowed; `null` where it reads well. */
  readonly problem: string | null;
}

export type ByPath<T> = Readonly<Record<Path, T>>;

/** Everything but what belongs to this place and the places within it. */
export function without<T>(entries: ByPath<T>, place: Path): ByPath<T> {
  return filter(
    entries,
    (path) => path !== place && !path.startsWith(`${place}.`) && !path.startsWith(`${place}[`),
  );
}

/** Everything that does not belong to a row: how the reader thinks of the fan's pressure, not of the third resistor. */
export function withoutRows<T>(entries: ByPath<T>): ByPath<T> {
  return filter(entries, (path) => !/\[\d/.test(path));
}

/** Makes room at `index` for a new row: what belonged to the rows from there on moves one down. */
export function openRow<T>(entries: ByPath<T>, list: Path, index: number): ByPath<T> {
  return renumber(entries, list, (row) => (row >= index ? row + 1 : row));
}

/** Drops what belonged to row `index` and closes the ranks. */
export function closeRow<T>(entries: ByPath<T>, list: Path, index: number): ByPath<T> {
  return renumber(entries, list, (row) => (row === index ? null : row > index ? row - 1 : row));
}

function renumber<T>(entries: ByPath<T>, list: Path, to: (row: number) => number | null): ByPath<T> {
  const start = `${list}[`;
  const moved: Record<Path, T> = {};
  for (const [path, entry] of Object.entries(entries)) {
    if (!path.startsWith(start)) {
      moved[path] = entry;
      continue;
    }
    const end = path.indexOf(']', start.length);
    const row = to(Number(path.slice(start.length, end)));
    if (row !== null) moved[`${start}${row}${path.slice(end)}`] = entry;
  }
  return moved;
}

function filter<T>(entries: ByPath<T>, keep: (path: Path) => boolean): ByPath<T> {
  return Object.fromEntries(Object.entries(entries).filter(([path]) => keep(path)));
}
