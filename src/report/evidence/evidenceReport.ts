import type { CheckKind } from '../../core/card.ts';
import { type StudyReport, saysTable } from '../studyReport.ts';
import type { TextTable } from '../types.ts';
import { capital } from '../words.ts';
import type { CheckGroup } from './checkRecord.ts';
import { deviationChart, type EvidenceChart, matchChart } from './evidenceChart.ts';
import { printTables } from './evidencePrint.ts';
import { checksTable, kindsTable, subjectsIn, subjectsTable } from './evidenceTables.ts';
import { kindOrder, kindWords } from './kinds.ts';
import { type Check, flatten, totalsOf } from './totals.ts';
import { count, shareOf, trustSentences } from './trustParagraph.ts';
import { uncheckedRemarks, uncheckedTable } from './unchecked.ts';

/** Which checks a reader wants to see; `all` of either. */
export interface EvidenceChoice {
  readonly kind: CheckKind | 'all';
  readonly subject: string;
}

/** One subject of those chosen. */
export interface EvidenceSection {
  readonly id: string;
  /** Its name, and what its checks come to. */
  readonly heading: string;
  readonly remark: string | null;
  readonly table: TextTable;
}

/** What the page of evidence says of the checks that a run of the tests left. */
export interface EvidenceReport extends StudyReport {
  /** Of all checks, whatever is chosen. */
  readonly kinds: readonly { readonly id: CheckKind | 'all'; readonly label: string }[];
  readonly subjects: readonly { readonly id: string; readonly label: string }[];
  /** Of those chosen. */
  readonly shown: string;
  readonly charts: readonly EvidenceChart[];
  readonly sections: readonly EvidenceSection[];
  /** All of those chosen in one table, beside the charts. */
  readonly twin: TextTable;
}

export const everything: EvidenceChoice = { kind: 'all', subject: 'all' };

export function evidenceReport(
  groups: readonly CheckGroup[],
  choice: EvidenceChoice = everything,
): EvidenceReport {
  const checks = flatten(groups);
  const chosen = checks.filter(
    ({ kind, subject }) =>
      (choice.kind === 'all' || kind === choice.kind) &&
      (choice.subject === 'all' || subject === choice.subject),
  );
  const [sentence = '', ...more] = trustSentences(groups);
  return {
    sentence,
    remarks: [...more, ...uncheckedRemarks(checks)],
    tables: [kindsTable(checks), subjectsTable(checks), uncheckedTable(checks)],
    kinds: [
      { id: 'all', label: 'Every kind' },
      ...kindOrder.map((id) => ({ id, label: kindWords[id].title })),
    ],
    subjects: [
      { id: 'all', label: 'Every subject' },
      ...subjectsIn(checks).map(({ id, title }) => ({ id, label: title })),
    ],
    shown: shownSays(chosen),
    charts: chosen.length > 0 ? [matchChart(chosen), deviationChart(chosen)] : [],
    sections: subjectsIn(chosen).map(({ id, title, remark, checks: own }) => ({
      id,
      heading: `${title}: ${summary(own)}`,
      remark,
      table: checksTable(`evidence${capital(id)}`, `${title}: published and computed`, own),
    })),
    twin: checksTable('evidence', 'Every check shown, published and computed', chosen),
  };
}

function summary(checks: readonly Check[]): string {
  const { count: all, within1 } = totalsOf(checks);
  return `${count(all)} ${all === 1 ? 'check' : 'checks'}, ${shareOf(within1, all)} within 1\u202f%`;
}

function shownSays(checks: readonly Check[]): string {
  if (checks.length === 0) return 'No check is of this kind and subject.';
  const { sources } = totalsOf(checks);
  return `${summary(checks)}, of ${count(sources)} ${sources === 1 ? 'source' : 'sources'}.`;
}

/** For print: what it comes to, the totals, and a table a subject. */
export function printedEvidence(groups: readonly CheckGroup[]): TextTable[] {
  const report = evidenceReport(groups);
  return [
    saysTable('evidenceSays', 'What the program is checked against', report),
    ...report.tables,
    ...printTables(flatten(groups)),
  ];
}
