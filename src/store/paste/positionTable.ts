import { isValue } from '../../io/cellNumbers.ts';
import { readHead } from '../../io/columnHead.ts';
import type { Column, Columns } from '../../io/columns.ts';

export type PositionColumn = 'part' | 'resistance' | 'on' | 'flipped' | 'watts';

/** What people write at the head of such a column. */
const heads: Readonly<Record<PositionColumn, RegExp>> = {
  part: /^(?:part|kind|type|name)s?\b/i,
  resistance: /^(?:resistance|value|ohms?|Ω|R)(?:\b|$|\s|[,([/])/i,
  on: /^(?:on|in use|switched)\b/i,
  flipped: /^flip/i,
  watts: /^(?:watts?|power|load|P|W)\b/i,
};

/** A table of resistors, its head apart. */
export interface PositionTable {
  readonly head: readonly Column[] | null;
  /** What each column is; `null` where its head says nothing known. */
  readonly meaning: readonly (PositionColumn | null)[];
  readonly body: Columns['rows'];
  /** Line of the text in which each row begins. */
  readonly lines: Columns['lines'];
}

/** What the columns of a table are: by their heads, or by their number where there is none. */
export function positionTable(columns: Columns): PositionTable {
  const { head, body, lines } = withNames(columns);
  const meaning = head?.map(({ name }) => nameOf(name)) ?? columnsWithoutHead(body[0]?.length ?? 0);
  return { head, meaning, body, lines };
}

/** A first line of words known here is a head even where no number follows. */
function withNames({ head, rows, lines }: Columns): Omit<PositionTable, 'meaning'> {
  const first = rows[0]?.map(readHead) ?? [];
  const isHead = head === null && first.some(({ name }) => nameOf(name) !== null) && !rows[0]?.some(isValue);
  return isHead ? { head: first, body: rows.slice(1), lines: lines.slice(1) } : { head, body: rows, lines };
}

function nameOf(name: string): PositionColumn | null {
  const found = Object.entries(heads).find(([, pattern]) => pattern.test(name));
  return found === undefined ? null : (found[0] as PositionColumn);
}

/** Whether a table that was cut at its commas could be a column of decimal numbers as well. */
export function isTorn({ separator, rows }: Columns): boolean {
  return (
    separator === ',' && rows.every((row) => row.length === 2 && row.every((cell) => /^\d+$/.test(cell)))
  );
}

/** What the columns of a table without a head are taken for, by their number. */
function columnsWithoutHead(width: number): readonly PositionColumn[] {
  const byWidth: readonly (readonly PositionColumn[])[] = [
    ['watts'],
    ['part', 'watts'],
    ['on', 'flipped', 'watts'],
    ['part', 'on', 'flipped', 'watts'],
  ];
  return byWidth[Math.min(Math.max(width, 1), byWidth.length) - 1] ?? [];
}
