import { readColumns } from '../../io/columns.ts';
import type { DesignActions } from '../state.ts';
import { pastePositions } from './pastePositions.ts';
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
  const count = read.columns.rows.length;
  return refusal === null
    ? taken(`${count === 1 ? 'One row' : `${count} rows`} taken over.`)
    : refused(refusal);
}
