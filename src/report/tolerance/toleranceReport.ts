import type { Design } from '../../model/design.ts';
import { fittedSigmas } from '../../studies/bench/fittedSigmas.ts';
import type { ToleranceResult } from '../../studies/tolerance/result.ts';
import type { Amounts } from '../amount.ts';
import { table, told } from '../makeTable.ts';
import { saidPercent, withAmounts } from '../said.ts';
import type { StudyReport } from '../studyReport.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { limitLabels } from '../wording.ts';
import { capital, fixed, kelvins } from '../words.ts';
import { type HistogramChart, histogramTable, marginChart } from './histogramChart.ts';
import { methodSpreadRows, spreadRows, spreadsTable } from './spreadRows.ts';
import { toleranceRemarks } from './toleranceRemarks.ts';
import { toleranceSentence } from './toleranceSentence.ts';
import { influenceName, outputOrder, outputWords } from './toleranceWords.ts';

interface FigureSpreadRow {
  readonly label: string;
  readonly nominal: string;
  readonly p5: string;
  readonly p50: string;
  readonly p95: string;
  readonly mean: string;
  readonly amounts: Amounts<'nominal' | 'p5' | 'p50' | 'p95' | 'mean'>;
}

export interface InfluenceRow {
  readonly key: string;
  readonly label: string;
  /** Of the margin's variance. */
  readonly value: string;
  /** What more of it makes the film. */
  readonly aside: string;
  readonly share: number;
  readonly onHolding: string;
  readonly way: string;
  readonly amounts: Amounts<'value' | 'onHolding' | 'way'>;
}

interface FailingRow {
  readonly label: string;
  readonly boxes: string;
  readonly amounts: Amounts<'boxes'>;
}

/** What if parts vary: all that screen, sheet and terminal say about it. */
export interface ToleranceReport extends StudyReport {
  readonly chart: HistogramChart | null;
  /** Most first; what hardly matters is left to the table. */
  readonly influences: readonly InfluenceRow[];
  /** Each beside its picture; `tables` has them in the order of reading. */
  readonly twins: {
    readonly figures: TextTable;
    readonly influences: TextTable;
    readonly failing: TextTable;
    readonly histogram: TextTable | null;
    readonly spreads: TextTable;
  };
}

/** As many bars as still read as a ranking, and none too short to see. */
const mostBars = 8;
const leastBar = 0.005;

export function toleranceReport(
  design: Design,
  result: ToleranceResult,
  system: UnitSystem,
): ToleranceReport {
  const chart = chartOf(result, system);
  const influences = influenceRows(result);
  const twins = {
    figures: figuresTable(figureRows(result, system)),
    influences: influencesTable(influences),
    failing: failingTable(failingRows(result)),
    histogram: chart && histogramTable(chart),
    spreads: spreadsTable(spreadRows(design, system), methodSpreadRows(result.methods, fittedSigmas(design))),
  };
  return {
    sentence: toleranceSentence(result),
    chart,
    influences: influences.slice(0, mostBars).filter((row) => row.share >= leastBar),
    remarks: toleranceRemarks(design, result),
    twins,
    tables: Object.values(twins).flatMap((table) => (table && table.rows.length > 0 ? [table] : [])),
  };
}

function figureRows({ figures }: ToleranceResult, system: UnitSystem): FigureSpreadRow[] {
  return outputOrder.flatMap((key) => {
    const found = figures.find((figure) => figure.key === key);
    if (found === undefined || (key === 'sound_dBA' && found.p95 === 0)) return [];
    const [label, say] = outputWords[key];
    const none = { text: '–', value: null, unit: say(found.p50, system).unit };
    return [
      {
        label,
        ...withAmounts({
          nominal: found.nominal === null ? none : say(found.nominal, system),
          p5: say(found.p5, system),
          p50: say(found.p50, system),
          p95: say(found.p95, system),
          mean: say(found.mean, system),
        }),
      },
    ];
  });
}

function chartOf({ margin, figures }: ToleranceResult, system: UnitSystem): HistogramChart | null {
  const film = figures.find(({ key }) => key === 'filmMargin_K');
  if (margin === null || film === undefined) return null;
  const say = (dT_K: number) => kelvins(dT_K, system, 1);
  return marginChart(
    margin,
    [
      { label: '5 %', at_K: film.p5 },
      { label: '50 %', at_K: film.p50 },
      { label: '95 %', at_K: film.p95 },
    ],
    `How far the hottest film stays below its limit: 90 of 100 boxes between ${say(film.p5)} and ${say(film.p95)}, half of them above ${say(film.p50)}.`,
    system,
  );
}

function influenceRows({ influences }: ToleranceResult): InfluenceRow[] {
  return influences.map((influence) => ({
    key: influence.of.is === 'input' ? influence.of.path : influence.of.factor,
    label: capital(influenceName(influence)),
    aside: Math.abs(influence.way) < 0.02 ? '' : influence.way > 0 ? 'cooler' : 'hotter',
    share: influence.onMargin,
    ...withAmounts({
      value: saidPercent(influence.onMargin),
      onHolding:
        influence.onHolding === null
          ? { text: '–', value: null, unit: '%' }
          : saidPercent(influence.onHolding),
      way: { text: fixed(influence.way, 2), value: influence.way, unit: '' },
    }),
  }));
}

function failingRows({ failing, draws }: ToleranceResult): FailingRow[] {
  return failing.map(({ limit, count }) => ({
    label: limitLabels[limit],
    ...withAmounts({ boxes: saidPercent(count / draws) }),
  }));
}

function figuresTable(rows: readonly FigureSpreadRow[]): TextTable {
  return table(
    'toleranceFigures',
    'Main figures over all boxes drawn: so many of a hundred lie below',
    ['Figure', '>As drawn', '>5 %', '>50 %', '>95 %', '>Mean'],
    rows.map((row) => [row.label, ...told(row, 'nominal', 'p5', 'p50', 'p95', 'mean')]),
  );
}

function influencesTable(rows: readonly InfluenceRow[]): TextTable {
  return table(
    'toleranceInfluences',
    'What matters most: share of the variance that goes with each input alone',
    ['Input', '>Of the film’s margin', '>Of holding', '>Rank correlation with the margin'],
    rows.map((row) => [row.label, ...told(row, 'value', 'onHolding', 'way')]),
  );
}

function failingTable(rows: readonly FailingRow[]): TextTable {
  return table(
    'toleranceFailing',
    'Which limit gives first in boxes that do not hold',
    ['Limit', '>Of all boxes'],
    rows.map((row) => [row.label, ...told(row, 'boxes')]),
  );
}
