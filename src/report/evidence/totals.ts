import type { CheckKind } from '../../core/card.ts';
import type { CheckGroup, CheckRecord } from './checkRecord.ts';
import { publishedValue } from './checkWords.ts';
import { kindOrder } from './kinds.ts';

/** A check with all that its group knows. */
export type Check = CheckRecord & Omit<CheckGroup, 'checks'>;

export const flatten = (groups: readonly CheckGroup[]): Check[] =>
  groups.flatMap(({ checks, ...from }) => checks.map((check) => ({ ...from, ...check })));

/** Counts of some checks. */
export interface Totals {
  readonly count: number;
  readonly sources: number;
  readonly within1: number;
  readonly within5: number;
  /** The one that is farthest off, relative; `null` where there is none with a deviation. */
  readonly worst: Check | null;
}

/** Nil has no share to be off by. */
const isRelative = (check: Check) => publishedValue(check) !== 0;

/** The last digit of an allowance or a deviation as written. */
const hair = 1e-8;

/** Whether a check lies where its allowance lets it; computed again from the numbers as written. */
export function isAllowed({ deviation, allowed: [low, high] }: CheckRecord): boolean {
  const rounding = 0.006 * Math.max(Math.abs(low), Math.abs(high)) + hair;
  return deviation >= low - rounding && deviation <= high + rounding;
}

export function totalsOf(checks: readonly Check[]): Totals {
  const relative = checks.filter(isRelative);
  const off = ({ deviation }: CheckRecord) => Math.abs(deviation);
  const within = (share: number) => checks.filter((check) => off(check) <= share + hair).length;
  const worst = relative.reduce<Check | null>(
    (most, each) => (most === null || off(each) > off(most) ? each : most),
    null,
  );
  return {
    count: checks.length,
    sources: new Set(checks.map(({ source }) => source)).size,
    within1: within(0.01),
    within5: within(0.05),
    worst,
  };
}

export interface KindTotals extends Totals {
  readonly kind: CheckKind;
}

/** Totals of every kind, also of one without a check: that none is measured has to be said. */
export function kindTotals(checks: readonly Check[]): KindTotals[] {
  return kindOrder.map((kind) => ({ kind, ...totalsOf(checks.filter((check) => check.kind === kind)) }));
}
