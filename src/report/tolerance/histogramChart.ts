import type { Histogram } from '../../studies/tolerance/result.ts';
import { amount, unitOf } from '../format.ts';
import { table } from '../makeTable.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { fixed, roundTicks } from '../words.ts';

export interface HistogramBin {
  /** Edges, in the display unit. */
  readonly from: number;
  readonly to: number;
  /** Of a hundred boxes. */
  readonly holding: number;
  readonly failing: number;
}

/** A value that the chart points out. */
export interface HistogramMark {
  readonly label: string;
  readonly x: number;
}

/** How often each value comes up, in the display unit named beside it. */
export interface HistogramChart {
  readonly id: string;
  readonly caption: string;
  readonly xLabel: string;
  readonly xUnit: string;
  readonly yLabel: string;
  readonly bins: readonly HistogramBin[];
  readonly marks: readonly HistogramMark[];
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly spoken: string;
}

/** How far the hottest film stays below what it may have, over all boxes drawn. */
export function marginChart(
  { edges, holding, failing }: Histogram,
  marks: readonly { readonly label: string; readonly at_K: number }[],
  spoken: string,
  system: UnitSystem,
): HistogramChart {
  const show = (dT_K: number) => amount(dT_K, 'temperatureDifference', system);
  const all = holding.reduce((sum, each, i) => sum + each + (failing[i] ?? 0), 0);
  const bins = holding.map((each, i) => ({
    from: show(edges[i] ?? 0),
    to: show(edges[i + 1] ?? 0),
    holding: (100 * each) / all,
    failing: (100 * (failing[i] ?? 0)) / all,
  }));
  const most = bins.reduce((top, bin) => Math.max(top, bin.holding + bin.failing), 0);
  return {
    id: 'toleranceMargin',
    caption: 'Hottest film below its limit, over all boxes drawn',
    xLabel: 'below the film’s limit',
    xUnit: unitOf('temperatureDifference', system),
    yLabel: 'of 100',
    bins,
    marks: marks.map(({ label, at_K }) => ({ label, x: show(at_K) })),
    xTicks: roundTicks(bins[0]?.from ?? 0, bins.at(-1)?.to ?? 1),
    yTicks: roundTicks(0, most),
    spoken,
  };
}

export function histogramTable({ id, caption, xLabel, xUnit, bins }: HistogramChart): TextTable {
  const edge = (value: number) => ({ text: fixed(value, decimalsOf(bins)), value, unit: xUnit });
  const boxes = (value: number) => ({ text: fixed(value, 1), value, unit: '%' });
  return table(
    id,
    caption,
    [`>From, ${xUnit} ${xLabel}`, `>To, ${xUnit}`, '>Hold, %', '>Do not hold, %'],
    bins.map(({ from, to, holding, failing }) => [edge(from), edge(to), boxes(holding), boxes(failing)]),
  );
}

/** As many as tell the edges apart. */
function decimalsOf([first]: readonly HistogramBin[]): number {
  const width = first ? first.to - first.from : 1;
  return Math.min(6, Math.max(0, Math.ceil(-Math.log10(width)) + (width < 5 ? 1 : 0)));
}
