import type { ResidualChart } from '../../report/bench/residualChart.ts';

interface Spot {
  readonly x: number;
  /** Line of the reading, from 1. */
  readonly y: number;
}

interface Layout {
  readonly before: Spot[];
  readonly after: Spot[];
  readonly labels: readonly string[];
  /** In px. */
  readonly labelWidth: number;
  readonly lines: number;
  /** Of the whole chart, in px. */
  readonly height: number;
}

const axisHeight = 64;
const roomy = 22;
/** Lines no nearer than their names may stand. */
const tight = 15;
const few = 24;
/** Of a letter, on average, and of the stroke between name and chart. */
const letter = 7.2;
const stroke = 14;

/** A line for every reading, close together where they are many. */
export function residualLayout({ rows }: ResidualChart): Layout {
  const step = rows.length > few ? tight : roomy;
  return {
    before: rows.map(({ before }, at) => ({ x: before, y: at + 1 })),
    after: rows.flatMap(({ after }, at) => (after === null ? [] : [{ x: after, y: at + 1 }])),
    labels: rows.map(({ label }) => label),
    labelWidth: stroke + letter * Math.max(...rows.map(({ label }) => label.length)),
    lines: rows.length,
    height: axisHeight + step * (rows.length + 0.5),
  };
}
