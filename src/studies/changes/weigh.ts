import { ordinaryRun, type Run } from '../../core/system/input.ts';
import type { LimitKey, Outcome } from '../../core/system/outcome.ts';
import { solveSystem } from '../../core/system/solveSystem.ts';
import { checkDesign } from '../../model/check.ts';
import type { Design } from '../../model/design.ts';
import { toCore } from '../../model/toCore.ts';
import { type Judged, judgedOf } from '../outputs.ts';
import type { Trial } from '../vary.ts';

/** A design judged, with the kelvin that each of its limits leaves; negative where it is too hot. */
export type Weighed =
  | ({ readonly ok: true; readonly margins_K: Readonly<Partial<Record<LimitKey, number>>> } & Judged)
  | Extract<Trial, { ok: false }>;

/** Checked and solved, pulses followed: what the bench would say. */
export function weigh(design: Design, run: Run = ordinaryRun): Weighed {
  const [problem] = checkDesign(design);
  if (problem) return { ok: false, why: 'clash', problem };
  return weighOutcome(solveSystem(toCore(design), run));
}

function weighOutcome(outcome: Outcome): Weighed {
  const judged = judgedOf(outcome);
  if (!outcome.ok || judged === null)
    return { ok: false, why: 'noAnswer', reason: outcome.ok ? 'notConverged' : outcome.reason };
  const margins_K: Partial<Record<LimitKey, number>> = {};
  for (const { key, margin_K } of outcome.limits) if (margin_K !== null) margins_K[key] = margin_K;
  return { ok: true, margins_K, ...judged };
}
