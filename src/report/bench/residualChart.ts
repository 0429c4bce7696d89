import { table } from '../makeTable.ts';
import type { TextTable } from '../types.ts';
import { capital, roundTicks } from '../words.ts';
import { saidTimesWithin } from './benchWords.ts';

/** One reading: how far off, in half widths of its instrument's band. */
export interface Residual {
  /** Unique, and in the order of the readings. */
  readonly key: string;
  readonly label: string;
  readonly before: number;
  /** With the fitted values; `null` where nothing was fitted, or this reading took no part. */
  readonly after: number | null;
}

/** Readings one under another, the band of their instruments from −1 to 1. */
export interface ResidualChart {
  readonly id: string;
  readonly caption: string;
  readonly xLabel: string;
  readonly rows: readonly Residual[];
  readonly isFitted: boolean;
  readonly ticks: readonly number[];
  readonly spoken: string;
}

/** `null` without a reading that has an answer. */
export function residualChart(rows: readonly Residual[]): ResidualChart | null {
  if (rows.length === 0) return null;
  const isFitted = rows.some(({ after }) => after !== null);
  const all = rows.flatMap(({ before, after }) => (after === null ? [before] : [before, after]));
  const inside = rows.filter(({ before, after }) => Math.abs(after ?? before) <= 1).length;
  return {
    id: isFitted ? 'benchFitResiduals' : 'benchResiduals',
    caption: isFitted
      ? 'How far each reading is off, before the fit and after it'
      : 'How far each reading is off',
    xLabel: 'measured less computed, in half widths of the instrument’s band',
    rows,
    isFitted,
    ticks: roundTicks(Math.min(-1.5, ...all), Math.max(1.5, ...all)),
    spoken: `Deviation of ${rows.length} readings over what their instruments may be off${isFitted ? ', after the fit' : ''}: ${inside} inside the band from −1 to 1.`,
  };
}

export function residualTable({ id, caption, rows, isFitted }: ResidualChart): TextTable {
  return table(
    id,
    caption,
    ['Reading', isFitted ? '>Before the fit' : '>Off', ...(isFitted ? ['>After the fit'] : [])],
    rows.map(({ label, before, after }) => [
      capital(label),
      saidTimesWithin(before),
      ...(isFitted ? [saidTimesWithin(after)] : []),
    ]),
  );
}
