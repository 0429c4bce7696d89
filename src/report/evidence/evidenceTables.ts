import { formatNumber } from '../../units/formatNumber.ts';
import type { Said } from '../amount.ts';
import { type Cell, table } from '../makeTable.ts';
import type { TextTable } from '../types.ts';
import { allowanceSays, citation, deviationSays, publishedValue } from './checkWords.ts';
import { kindWords } from './kinds.ts';
import { isOfMethods, subjectsOf } from './subjects.ts';
import { type Check, type KindTotals, kindTotals, totalsOf } from './totals.ts';
import { count } from './trustParagraph.ts';

const thin = '\u202f';

const number = (text: string, value: number, unit: string | undefined): Said => ({
  text: unit === undefined ? text : `${text}${thin}${unit}`,
  value,
  unit: unit ?? '',
});

/** The number as printed. */
export const publishedCell = (check: Check): Said => number(check.printed, publishedValue(check), check.unit);

/** What the program gives, to the digits that are kept. */
export const computedCell = ({ computed, unit }: Check): Said =>
  number(formatNumber(computed, 6), computed, unit);

function checkCells(check: Check): Cell[] {
  const { quantity, test, deviation, kind } = check;
  return [
    quantity,
    test,
    publishedCell(check),
    computedCell(check),
    { text: deviationSays(check), value: 100 * deviation, unit: '%' },
    allowanceSays(check),
    kindWords[kind].title,
    citation(check),
  ];
}

/** Checks, each a row. */
export function checksTable(id: string, caption: string, checks: readonly Check[]): TextTable {
  return table(
    id,
    caption,
    ['Quantity', 'Case', '>Published', '>Computed', '>Deviation', 'Allowed', 'Kind', 'Source'],
    checks.map(checkCells),
  );
}

const totalCells = ({ count: n, sources: m, within1, within5, worst }: Omit<KindTotals, 'kind'>): Cell[] => [
  { text: count(n), value: n, unit: '' },
  { text: count(m), value: m, unit: '' },
  { text: count(within1), value: within1, unit: '' },
  { text: count(within5), value: within5, unit: '' },
  worst === null ? '–' : { text: deviationSays(worst), value: 100 * worst.deviation, unit: '%' },
];

const totalHeads = ['>Checks', '>Sources', '>Within 1 %', '>Within 5 %', '>Farthest off'];

/** Totals of each kind, of those that check methods. */
export function kindsTable(checks: readonly Check[]): TextTable {
  const ofMethods = checks.filter(({ subject }) => isOfMethods(subject));
  const all: Cell[] = ['All', '', ...totalCells(totalsOf(ofMethods))];
  return table(
    'evidenceKinds',
    'Checks of methods by kind',
    ['Kind', 'What stands beside', ...totalHeads],
    [
      ...kindTotals(ofMethods).map(({ kind, ...totals }) => [
        kindWords[kind].title,
        kindWords[kind].means,
        ...totalCells(totals),
      ]),
      all,
    ],
  );
}

/** One subject: its checks, and what is to be said of them. */
export interface EvidenceSubject {
  readonly id: string;
  readonly title: string;
  readonly remark: string | null;
  readonly checks: readonly Check[];
}

export function subjectsIn(checks: readonly Check[]): EvidenceSubject[] {
  return subjectsOf(new Set(checks.map(({ subject }) => subject))).map(({ id, title, remark }) => ({
    id,
    title,
    remark: remark ?? null,
    checks: checks.filter(({ subject }) => subject === id),
  }));
}

/** Totals of each subject. */
export function subjectsTable(checks: readonly Check[]): TextTable {
  return table(
    'evidenceSubjects',
    'Checks by subject',
    ['Subject', ...totalHeads],
    subjectsIn(checks).map((subject) => [subject.title, ...totalCells(totalsOf(subject.checks))]),
  );
}
