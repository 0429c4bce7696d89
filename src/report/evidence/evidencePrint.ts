import { type Cell, table } from '../makeTable.ts';
import type { TextTable } from '../types.ts';
import { capital } from '../words.ts';
import { citation, deviationSays, reachSays } from './checkWords.ts';
import { computedCell, publishedCell, subjectsIn } from './evidenceTables.ts';
import { kindWords } from './kinds.ts';
import type { Check } from './totals.ts';

/** Checks on paper: sources by number behind them, for cited in every row they would fill a hundred pages. */
export function printTables(checks: readonly Check[]): TextTable[] {
  const origin = (check: Check) => `${kindWords[check.kind].title}. ${citation(check)}`;
  const numbers = new Map([...new Set(checks.map(origin))].map((text, i) => [text, i + 1]));
  const row = (check: Check): Cell[] => {
    const number = numbers.get(origin(check)) ?? 0;
    return [
      `${capital(check.quantity)}: ${check.test}`,
      publishedCell(check),
      computedCell(check),
      deviationSays(check),
      reachSays(check),
      { text: `[${number}]`, value: number, unit: '' },
    ];
  };
  return [
    ...subjectsIn(checks).map(({ id, title, checks: own }) =>
      table(
        `evidence${capital(id)}`,
        `${title}: published and computed`,
        ['Check', '>Published', '>Computed', '>Deviation', '>Allowed', '>From'],
        own.map(row),
      ),
    ),
    table(
      'evidenceSources',
      'What the checks are from',
      ['>No.', 'Kind and source'],
      [...numbers].map(([text, number]) => [{ text: `[${number}]`, value: number, unit: '' }, text]),
    ),
  ];
}
