import { table } from './makeTable.ts';
import { section, textTable, wrap } from './reportText.ts';
import type { TextTable } from './types.ts';

/** What every study says, whatever it is about: its answer in a sentence, what else is to be said, its tables. */
export interface StudyReport {
  readonly sentence: string;
  readonly remarks: readonly string[];
  readonly tables: readonly TextTable[];
}

const width = 100;

/** For a terminal of about a hundred columns. */
export function studyText({ sentence, remarks, tables }: StudyReport): string {
  const says = remarks.map((remark) => wrap(`- ${remark}`, width, '  ')).join('\n');
  return `${[section(sentence, []), says, ...tables.map(textTable)].filter((block) => block !== '').join('\n\n')}\n`;
}

/** Sentence and remarks as a table of one column, for print. */
export function saysTable(id: string, caption: string, { sentence, remarks }: StudyReport): TextTable {
  return table(
    id,
    caption,
    ['What comes of it'],
    [sentence, ...remarks].map((line) => [line]),
  );
}
