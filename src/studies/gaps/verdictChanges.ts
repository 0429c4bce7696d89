import type { LimitKey, LimitState } from '../../core/system/outcome.ts';
import type { Trial } from '../vary.ts';

/** A verdict, or that there is none: the box has no answer. */
export type GapState = LimitState | 'noAnswer';

/** A place where the verdict is another on both sides. */
export interface VerdictChange {
  /** Still the verdict `from` here, and `to` here already; as close together as was asked. */
  readonly before_m: number;
  readonly after_m: number;
  readonly from: GapState;
  readonly to: GapState;
  /** The limit that gives first on the worse side; `null` without an answer there. */
  readonly limit: LimitKey | null;
}

export interface Tried {
  readonly at_m: number;
  readonly trial: Trial;
}

/** @returns `null` for what cannot be built */
export function stateOf(trial: Trial): GapState | null {
  if (trial.ok) return trial.state;
  return trial.why === 'clash' ? null : 'noAnswer';
}

/**
 * Where the verdict changes between neighbours of a rising list, halved until it stands within `within_m`. Of several
 * changes between two neighbours one is found.
 */
export function verdictChanges(
  tried: readonly Tried[],
  attempt: (at_m: number) => Trial,
  within_m: number,
): VerdictChange[] {
  return tried.flatMap((low, i) => {
    const high = tried[i + 1];
    const change = high && changeBetween(low, high, attempt, within_m);
    return change ? [change] : [];
  });
}

function changeBetween(
  low: Tried,
  high: Tried,
  attempt: (at_m: number) => Trial,
  within_m: number,
): VerdictChange | null {
  const from = stateOf(low.trial);
  if (from === null || stateOf(high.trial) === null || from === stateOf(high.trial)) return null;
  let before = low;
  let after = high;
  while (after.at_m - before.at_m > within_m) {
    const at_m = (before.at_m + after.at_m) / 2;
    const middle = { at_m, trial: attempt(at_m) };
    if (stateOf(middle.trial) === from) before = middle;
    else after = middle;
  }
  const to = stateOf(after.trial);
  if (to === null) return null;
  const worse = rank[to] < rank[from] ? after : before;
  return {
    before_m: before.at_m,
    after_m: after.at_m,
    from,
    to,
    limit: worse.trial.ok ? worse.trial.limit : null,
  };
}

/** Worst first. */
export const rank: Readonly<Record<GapState, number>> = { noAnswer: 0, fails: 1, little: 2, holds: 3 };
