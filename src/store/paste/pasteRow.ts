import { readColumns } from '../../io/columns.ts';
import type { DesignActions } from '../state.ts';
import { quoted } from './curveColumns.ts';
import { pastePositions } from './pastePositions.ts';
import { type PositionTable, positionTable } from './positionTable.ts';
import { tooLong } from './tableSize.ts';
import { refused, type Told, taken } from './told.ts';

/** A table is laid over the row of resistors from `row` on. @param file the name of the file it came from */
export function pasteRow(apply: DesignActions['apply'], row: number, text: string, file?: string): Told {
  const tooMuch = tooLong(text);
  if (tooMuch !== null) return refused(tooMuch);
  const read = readColumns(text);
  if (!read.ok) return refused(read.reason);
  const name = file === undefined ? 'Resistors pasted' : 'Resistors opened';
  const refusal = apply((entered) => pastePositions(entered, row, read.columns), name);
  return refusal === null ? taken(howRead(positionTable(read.columns))) : refused(refusal);
}

/** How many rows, and which columns said nothing known here. */
function howRead({ head, meaning, body }: PositionTable): string {
  const count = `${body.length === 1 ? 'One row' : `${body.length} rows`} taken over.`;
  const left = (head ?? []).filter((_, at) => meaning[at] === null).map(({ written }) => written);
  return left.length === 0 ? count : `${count} Left out: ${quoted(left)}.`;
}
