import { ordinaryRun, type Run } from '../../core/system/input.ts';
import type { Limit, Outcome, Solved, Unsolved } from '../../core/system/outcome.ts';
import { solveSystem } from '../../core/system/solveSystem.ts';
import { checkDesign } from '../../model/check.ts';
import type { Design } from '../../model/design.ts';
import type { Problem } from '../../model/problem.ts';
import { toCore } from '../../model/toCore.ts';
import { type Judged, judgedOf } from '../outputs.ts';
import { pulseSwing } from '../ratedLoad.ts';
import { left_K, type Target } from './target.ts';

/** What keeps a design from its target, or would as the next. */
export type Stop =
  | { readonly why: 'limit'; readonly limit: Limit }
  | { readonly why: 'clash'; readonly problem: Problem }
  | { readonly why: 'noAnswer'; readonly unsolved: Unsolved };

/** How a design stands to a target. */
export interface Standing {
  /** Kelvin left until it is missed, negative where it is; `null` where there is nothing to solve or no answer. */
  readonly left_K: number | null;
  readonly stop: Stop;
  readonly judged: Judged | null;
  /** Of films in pulses over their mean rise; 1 where pulses are not followed or there are none. */
  readonly swing: number;
}

/** How a design is solved: replaced where something else than the whole box is to be searched. */
export type Solve = (design: Design) => Outcome;

export const withPulses: Solve = solver(ordinaryRun);
/** Pulses cost more than all the rest. */
export const withoutPulses: Solve = solver({ ...ordinaryRun, pulses: false });

function solver(run: Run): Solve {
  return (design) => solveSystem(toCore(design), run);
}

/** @param swing to count films by where `solve` does not follow them through their pulses */
export function standingOf(design: Design, target: Target, solve: Solve = withPulses, swing = 1): Standing {
  const [problem] = checkDesign(design);
  if (problem) return nowhere({ why: 'clash', problem });
  const outcome = solve(design);
  if (!outcome.ok) return nowhere({ why: 'noAnswer', unsolved: outcome });
  return { ...tightest(outcome, target, swing), judged: judgedOf(outcome), swing: pulseSwing(outcome) };
}

function nowhere(stop: Stop): Standing {
  return { left_K: null, stop, judged: null, swing: 1 };
}

/** The limit that leaves least; of a row without any that asks something, the first. */
function tightest(
  { limits, heat }: Solved,
  target: Target,
  swing: number,
): Pick<Standing, 'left_K' | 'stop'> {
  let least: { left: number; limit: Limit } = { left: Number.POSITIVE_INFINITY, limit: limits[0] as Limit };
  for (const limit of limits) {
    const left = left_K(target, limit, heat.entering_K, swing);
    if (left !== null && left < least.left) least = { left, limit };
  }
  return { left_K: Number.isFinite(least.left) ? least.left : 0, stop: { why: 'limit', limit: least.limit } };
}
