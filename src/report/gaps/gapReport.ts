import { fieldAt } from '../../model/fields.ts';
import { gapPath } from '../../studies/gaps/gap.ts';
import type { GapLine, GapQuestion } from '../../studies/gaps/gapLine.ts';
import type { LineChart } from '../lineChart.ts';
import type { StudyReport } from '../studyReport.ts';
import type { UnitSystem } from '../types.ts';
import { type GapChart, gapChart } from './gapChart.ts';
import { gapFigures } from './gapFigures.ts';
import { gapRemarks } from './gapRemarks.ts';
import { type GapRow, gapRows, gapTable } from './gapRows.ts';
import { gapSentence } from './gapSentence.ts';
import { gapSize } from './gapWords.ts';

/** What one gap of the baffle does to a box. */
export interface GapReport extends StudyReport {
  /** "Side clearance". */
  readonly label: string;
  readonly rows: readonly GapRow[];
  /** `null` where no value has an answer. */
  readonly chart: GapChart | null;
  readonly figures: readonly LineChart[];
}

export function gapReport(question: GapQuestion, line: GapLine, system: UnitSystem): GapReport {
  const { label } = fieldAt(gapPath(question.gap));
  const rows = gapRows(question, line, system);
  return {
    sentence: gapSentence(question, line, system),
    remarks: gapRemarks(question, line, system),
    label,
    rows,
    tables: [gapTable(label, gapSize(question.cut_m, system), rows)],
    chart: gapChart(question, line, system),
    figures: gapFigures(question, line, system),
  };
}
