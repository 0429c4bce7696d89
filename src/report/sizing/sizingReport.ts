import type { Design } from '../../model/design.ts';
import type { SizingQuestion, SizingResult } from '../../studies/sizing/sizing.ts';
import type { Target } from '../../studies/sizing/target.ts';
import { plain } from '../format.ts';
import { table, told } from '../makeTable.ts';
import type { StudyReport } from '../studyReport.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { sizeMeasures } from './sizeMeasures.ts';
import { rowAt, type SizeRow, sizingRows } from './sizingRows.ts';
import { missLead, shortClause, targetLead } from './targetWords.ts';

export interface SizingReport extends StudyReport {
  readonly rows: readonly SizeRow[];
}

/** How far every measure of a box may go by itself, and what ends it there. */
export function sizingReport(
  question: SizingQuestion,
  result: SizingResult,
  system: UnitSystem,
): SizingReport {
  const rows = sizingRows(question, result, system);
  return {
    sentence: sentenceOf(question, result, rows, system),
    remarks: [askedWords(question.target), besides],
    rows,
    tables: [sizesTable(rows)],
  };
}

function sizesTable(rows: readonly SizeRow[]): TextTable {
  return table(
    'sizes',
    'How far each measure may go by itself',
    ['Measure', '>Now', 'Answer', '>Value', '>Room', 'What ends it there', '>Film there', '>Sound there'],
    rows.map((r) => [
      r.label,
      ...told(r, 'now'),
      r.state === 'out' ? `out of reach, ${r.lead}` : r.lead,
      ...told(r, 'value', 'room'),
      r.stop,
      ...told(r, 'film', 'sound'),
    ]),
  );
}

const besides =
  'Rated watts, element volts and a sound that is judged are held as they are. Each measure is driven by itself, all else as it stands; values are rounded to the safe side.';

function askedWords(target: Target): string {
  switch (target.ask) {
    case 'spare':
      return `Every temperature rise, multiplied by ${plain(target.spareFactor)}, stays below its limit.`;
    case 'everyLimit':
      return `Every temperature stays so many kelvin below its limit.`;
    case 'film':
      return `The hottest film stays so many kelvin below its limit, in pulses at their end; the other temperatures just hold.`;
  }
}

function sentenceOf(
  { design, target }: SizingQuestion,
  { now }: SizingResult,
  rows: readonly SizeRow[],
  system: UnitSystem,
): string {
  if (now === null || (now.left_K !== null && now.left_K >= 0)) {
    const clauses = reach(rows, design);
    const lead = targetLead(target, system);
    return clauses.length > 0
      ? `${lead}, each by itself: ${clauses.join('; ')}.`
      : `${lead} the box does as it is.`;
  }
  return `${missLead(target, system)}: ${shortClause(now, target, design, system)}. ${alone(rows)}`;
}

/** What a box that meets its target would bear besides. */
function reach(rows: readonly SizeRow[], { fan, moreFans }: Design): string[] {
  const fans = moreFans.length + fan.sideBySide * fan.inARow > 1 ? 'fans' : 'fan';
  const clause = (key: SizeRow['key'], say: (row: SizeRow) => string) => {
    const row = rowAt(rows, key);
    return row === null || row.state === 'out' ? [] : [say(row)];
  };
  return [
    ...clause(
      'load',
      ({ value, state }) => `the box would carry ${state === 'free' ? 'more than ' : ''}${value}`,
    ),
    ...clause(
      'fanSupply',
      ({ value, sound, state }) =>
        `its ${fans} could run down to ${value}${state === 'free' ? ', where it just starts' : ''}, ${sound}`,
    ),
    ...clause('clearance', ({ value }) => `the clearance all round could grow to ${value}`),
    ...clause('room', ({ value }) => `the room could reach ${value}`),
  ];
}

/** As many ways out as still read as a list of them. */
const mostWays = 4;

/** What by itself brings a box to its target. */
function alone(rows: readonly SizeRow[]): string {
  const ways = rows
    .filter(({ state }) => state !== 'out')
    .slice(0, mostWays)
    .map(({ key, value }) => sizeMeasures[key].says(value));
  const [only, ...others] = ways;
  if (only === undefined)
    return 'No measure alone brings it there; the best of each stands below, with what is in the way.';
  const last = others.pop();
  return `By itself ${last === undefined ? only : `${[only, ...others].join(', ')} or ${last}`} would do.`;
}
