import type { GapChart } from '../../report/gaps/gapChart.ts';
import { levelLabel } from './axes.ts';
import { palette } from './palette.ts';

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

/** Beside the upper end of an upright line. */
export function presentLabel(value: string, leftwards: boolean) {
  const position = leftwards ? ('insideTopRight' as const) : ('insideTopLeft' as const);
  return {
    ...levelLabel(value, 'insideTopLeft'),
    fill: palette.ink,
    fontSize: 13,
    fontWeight: 650,
    position,
  };
}

/** The name of a level, at the end of it that is free. */
export function besideLabel(value: string, rightwards: boolean) {
  const position = rightwards ? ('insideTopRight' as const) : ('insideTopLeft' as const);
  return { ...levelLabel(value, 'insideTopLeft'), position };
}
