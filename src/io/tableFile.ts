import { tableData } from '../report/tableData.ts';
import type { TextTable, TitleBlock } from '../report/types.ts';
import { type CsvCell, writeCsv } from './writeCsv.ts';

/** Spreadsheets take a file without it for the code page of the machine, and m³/h for something else (common practice). */
const byteOrderMark = '\ufeff';

/** One table as the text of a CSV file: heads in the first line, bare numbers, in UTF-8. */
export function tableFile(table: TextTable): string {
  return byteOrderMark + writeCsv(linesOf(table));
}

/**
 * All tables in one file, for people: whose they are, then each under its caption, an empty line between. Its lines are
 * not equally long, which RFC 4180 (§2.4) asks of a single table.
 */
export function tablesFile(tables: readonly TextTable[], title: TitleBlock): string {
  const head = [title.title, title.revision, title.date, title.invented, title.stale];
  const blocks = tables.map((table): CsvCell[][] => [[], [table.caption], ...linesOf(table)]);
  return (
    byteOrderMark + writeCsv([...head.filter((text) => text !== '').map((text) => [text]), ...blocks.flat()])
  );
}

function linesOf(table: TextTable): CsvCell[][] {
  const { heads, rows } = tableData(table);
  return [[...heads], ...rows.map((row) => [...row])];
}
