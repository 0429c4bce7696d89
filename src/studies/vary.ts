import { ordinaryRun, type Run } from '../core/system/input.ts';
import type { Unsolved } from '../core/system/outcome.ts';
import { solveSystem } from '../core/system/solveSystem.ts';
import { checkDesign } from '../model/check.ts';
import type { Design } from '../model/design.ts';
import { type Path, setAll } from '../model/path.ts';
import type { Problem } from '../model/problem.ts';
import { toCore } from '../model/toCore.ts';
import { type Judged, judgedOf } from './outputs.ts';

/** Other values at existing places of a design: `{ 'baffle.sideClearance_m': 0.001, 'baffle.fitted': true }`. */
export type Values = Readonly<Record<Path, unknown>>;

export function withValues(design: Design, values: Values): Design {
  return setAll(design, values);
}

/** What becomes of a design with other values in it. */
export type Trial =
  | ({ readonly ok: true } & Judged)
  /** It can be built, but has no answer. */
  | { readonly ok: false; readonly why: 'noAnswer'; readonly reason: Unsolved['reason'] }
  /** It cannot be built: the first of what does not go together. */
  | { readonly ok: false; readonly why: 'clash'; readonly problem: Problem };

const withoutPulses: Run = { ...ordinaryRun, pulses: false };

/**
 * The varied design, checked and solved. Pulses are followed only where asked: they cost more than all the rest.
 * @param values must be inside the hard limits of their fields
 */
export function tryValues(design: Design, values: Values, run: Run = withoutPulses): Trial {
  return tryDesign(withValues(design, values), run);
}

export function tryDesign(design: Design, run: Run = withoutPulses): Trial {
  const [problem] = checkDesign(design);
  if (problem) return { ok: false, why: 'clash', problem };
  const outcome = solveSystem(toCore(design), run);
  const judged = judgedOf(outcome);
  if (judged) return { ok: true, ...judged };
  return { ok: false, why: 'noAnswer', reason: outcome.ok ? 'notConverged' : outcome.reason };
}
