import type { GapChart } from '../../report/gaps/gapChart.ts';
import { levelLabel } from './axes.ts';

export interface GapRow {
  readonly x: number;
  readonly film: number | null;
  readonly band: readonly [number, number] | null;
}

/** Fresh arrays, as a chart wants its data. */
export function gapRows({ points }: GapChart): GapRow[] {
  return points.map((point) => ({ ...point }));
}

type Spans = GapChart['spans'];

const rank = { noAnswer: 0, fails: 1, little: 2, holds: 3 } as const;

/** Of spans with different verdicts, those that are not the best. */
export function isWorse(spans: Spans): (span: Spans[number]) => boolean {
  const best = Math.max(...spans.map(({ state }) => rank[state]));
  return ({ state }) => rank[state] < best;
}

/** A verdict inside its span, where it has room. */
export function spanLabel(word: string, hasRoom: boolean) {
  return hasRoom
    ? { label: { ...levelLabel(word, 'insideBottomLeft'), position: 'insideTop' as const } }
    : {};
}
