/** A table as measured, in millimetres. */
export interface Measured {
  /** Caption and heads. */
  readonly head: number;
  readonly rows: readonly number[];
  /** Takes the whole width; others stand two beside one another. */
  readonly wide: boolean;
}

/** Rows `from` up to but without `to` of a table, under its heads. */
export interface Slice {
  readonly table: number;
  readonly from: number;
  readonly to: number;
}

/** Columns beside one another: one for wide tables, two for narrow ones. */
export type Strip = readonly (readonly Slice[])[];
export type PageOfTables = readonly Strip[];

/** Blank between two tables, in millimetres. */
export const gap = 4;
/** Heads do not stand alone, nor with one row. */
const leastRows = 2;
/** Up to this share of a page a table is not split. */
const together = 0.4;
/** Step in which the two columns of a strip are balanced. */
const step = 2;

interface Place {
  readonly table: number;
  readonly row: number;
}

interface Filled {
  readonly slices: readonly Slice[];
  readonly next: Place;
  readonly used: number;
}

/**
 * Breaks tables into pages of a height: heads come again with every piece, rows are never split, no heads stand alone at
 * the foot, and a table that would fit on the next page is not torn. Pure, so that it can be tested without a printer.
 */
export function paginate(tables: readonly Measured[], height: number): PageOfTables[] {
  const pages: Strip[][] = [[]];
  let used = 0;
  let at: Place = { table: 0, row: 0 };
  while (at.table < tables.length) {
    const end = endOfRun(tables, at.table);
    const run = tables.slice(0, end);
    const blank = used > 0 ? gap : 0;
    const room = height - used - blank;
    const filler = { tables: run, page: height, isFresh: used === 0 };
    const strip = tables[at.table]?.wide ? oneColumn(filler, at, room) : twoColumns(filler, at, room);
    if (strip.columns.some((slices) => slices.length > 0)) {
      pages.at(-1)?.push(strip.columns.filter((slices) => slices.length > 0));
      used += blank + strip.used;
      at = strip.next;
    }
    // What is left of the run did not fit here.
    if (at.table < end) {
      pages.push([]);
      used = 0;
    }
  }
  return pages.filter((strips) => strips.length > 0);
}

function endOfRun(tables: readonly Measured[], from: number): number {
  const end = tables.findIndex((table, i) => i > from && table.wide !== tables[from]?.wide);
  return end < 0 ? tables.length : end;
}

interface Filler {
  readonly tables: readonly Measured[];
  readonly page: number;
  /** Whether a column begins at the top of an empty page: something has to stand there, however large. */
  readonly isFresh: boolean;
}

interface Laid {
  readonly columns: readonly (readonly Slice[])[];
  readonly used: number;
  readonly next: Place;
}

function oneColumn(filler: Filler, at: Place, room: number): Laid {
  const { slices, used, next } = fill(filler, at, room);
  return { columns: [slices], used, next };
}

/** As low as both columns get, where the run ends on this page; else down to its foot. */
function twoColumns(filler: Filler, at: Place, room: number): Laid {
  const pair = (height: number, isFresh: boolean): Laid => {
    const left = fill({ ...filler, isFresh }, at, height);
    const right = fill({ ...filler, isFresh }, left.next, height);
    return {
      columns: [left.slices, right.slices],
      used: Math.max(left.used, right.used),
      next: right.next,
    };
  };
  for (let height = step; height < room; height += step) {
    const laid = pair(height, false);
    if (laid.next.table >= filler.tables.length) return laid;
  }
  return pair(room, filler.isFresh);
}

function fill({ tables, page, isFresh }: Filler, at: Place, height: number): Filled {
  const slices: Slice[] = [];
  let next = at;
  let used = 0;
  while (next.table < tables.length) {
    const { head, rows } = tables[next.table] as Measured;
    const rest = rows.slice(next.row);
    const blank = used > 0 ? gap : 0;
    const room = height - used - blank - head;
    const wanted = rowsWithin(rest, room);
    const isWhole = wanted === rest.length;
    const isTorn = next.row === 0 && head + sum(rest) <= together * page;
    const isEnough = isWhole || (!isTorn && wanted >= leastRows);
    const mustStand = isFresh && used === 0;
    if (!isEnough && !mustStand) break;
    const count = isEnough ? wanted : Math.max(1, wanted);
    slices.push({ table: next.table, from: next.row, to: next.row + count });
    used += blank + head + sum(rest.slice(0, count));
    if (count < rest.length) return { slices, used, next: { ...next, row: next.row + count } };
    next = { table: next.table + 1, row: 0 };
  }
  return { slices, used, next };
}

function rowsWithin(rows: readonly number[], room: number): number {
  let left = room;
  let count = 0;
  for (const row of rows) {
    left -= row;
    if (left < 0) break;
    count += 1;
  }
  return count;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
