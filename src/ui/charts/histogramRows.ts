import type { HistogramChart } from '../../report/tolerance/histogramChart.ts';
import { shortNumber } from './rows.ts';

export interface HistogramRow {
  readonly middle: number;
  readonly range: string;
  readonly holding: number;
  readonly failing: number;
}

/** A bar for every bin, over its middle. */
export function histogramRows({ bins }: HistogramChart): HistogramRow[] {
  return bins.map(({ from, to, holding, failing }) => ({
    middle: (from + to) / 2,
    range: `${shortNumber(from)} to ${shortNumber(to)}`,
    holding,
    failing,
  }));
}
