import type { ResidualChart } from '../../report/bench/residualChart.ts';
import {
  assumptionsTable,
  cutNotesTable,
  cutTables,
  everyInputTables,
  methodsTable,
  reportTables,
  sourcesTable,
} from '../../report/tables.ts';
import type { Report, TextTable } from '../../report/types.ts';
import type { FigureId } from '../../report/working/types.ts';
import { workingTables } from '../../report/working/workingTables.ts';
import { loadEvidence } from '../questions/evidence/keptEvidence.ts';
import type { StudyTables } from './studyTables.ts';

/** Pages that may be printed behind the summary: one line makes another. */
export interface FurtherPages {
  readonly id: string;
  /** Head of the pages, and the name of the choice. */
  readonly label: string;
  readonly says: string;
  /** Of the report, or of the studies that are answered for the design on the bench. */
  readonly tables: (report: Report, studies: StudyTables) => readonly TextTable[];
  /** Charts of readings, on a page behind the tables. */
  readonly residuals?: (studies: StudyTables) => readonly ResidualChart[];
  /** What has to be fetched before its tables are there. */
  readonly load?: () => Promise<unknown>;
  /** Width of the first column of every table, in millimetres, where they shall stand in line. */
  readonly firstColumn?: number;
}

/** Figures that the summary shows, in its order. */
export function summaryFigures({ figures, limits, fanStop }: Report): FigureId[] {
  const amounts = [...figures, ...fanStop.figures].map(({ amount }) => amount);
  return [...amounts, ...limits.map((limit) => limit.amounts.value)].flatMap(({ figure }) => figure ?? []);
}

/** What has its place on the summary itself or on other pages. */
const elsewhere = ['cautions', 'inputs', 'methods', 'sources', 'assumptions'];

export const furtherPages: readonly FurtherPages[] = [
  {
    id: 'inputs',
    label: 'All inputs',
    says: 'every field of the design, part by part',
    tables: everyInputTables,
    firstColumn: 46,
  },
  {
    id: 'working',
    label: 'Working',
    says: 'figures of the summary step by step, methods, sources, and what is taken for granted',
    tables: (report, { working }) =>
      [
        ...(working ? workingTables(working, summaryFigures(report)) : []),
        ...[methodsTable, sourcesTable, assumptionsTable].map((make) => make(report)),
      ].filter(({ rows }) => rows.length > 0),
  },
  {
    id: 'cut',
    label: 'Panels to cut',
    says: 'every panel with its sizes, cut-outs and bevels, and what to mind before cutting',
    tables: (report) => [...cutTables(report), cutNotesTable(report)].filter(({ rows }) => rows.length > 0),
  },
  {
    id: 'gaps',
    label: 'Which gap',
    says: 'what to cut, and every value of the gap that stands compared below the bench',
    tables: (_, { gaps }) => gaps,
  },
  {
    id: 'bench',
    label: 'Bench check',
    says: 'readings beside computed values, what was fitted to them, and how far each is off, drawn',
    tables: (_, { bench }) => bench,
    residuals: ({ residuals }) => residuals,
  },
  {
    id: 'tables',
    label: 'Tables',
    says: 'limits, every resistor and sink, every passage, the curves, the time after a stop of the fan',
    tables: (report) => {
      const onOwnPages = [...elsewhere, ...cutTables(report).map(({ id }) => id)];
      return reportTables(report).filter(({ id }) => !onOwnPages.includes(id));
    },
  },
  {
    id: 'evidence',
    label: 'Evidence',
    says: 'every published check with what was computed, by subject: some forty pages',
    tables: (_, { evidence }) => evidence,
    load: loadEvidence,
  },
];
