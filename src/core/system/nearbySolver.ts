import { describeOutcome } from './describeOutcome.ts';
import { ordinaryRun, type Run, type SystemInput } from './input.ts';
import { operatingPoints } from './operatingPoints.ts';
import type { Outcome } from './outcome.ts';
import { settleNear } from './settleNear.ts';
import { hindrance, runsAtUsed, settleSystem, solveSystem } from './solveSystem.ts';
import { prepareWork, type Work } from './work.ts';

/**
 * For many designs that differ by little from one: each starts from the settled flows and temperatures of that one, settles
 * to a millionth of a kelvin and is told in the same way as by `solveSystem`. Always from that one and never from the design
 * before, so that an answer depends on the two designs alone, not on the order or on who computes it. What is no neighbour –
 * other parts in the way of the air, another number of resistors, another meeting point with a dipping fan curve – is
 * answered the full way.
 * @param input the design in the middle; without an answer of its own all others go the full way
 */
export function nearbySolver(input: SystemInput, run: Run = ordinaryRun): (other: SystemInput) => Outcome {
  const near = settleSystem(input, run);
  if (!near.outcome.ok) return (other) => solveSystem(other, run);
  return (other) => quickAnswer(prepareWork(other, run), near.work) ?? solveSystem(other, run);
}

function quickAnswer(work: Work, near: Work): Outcome | null {
  const none = hindrance(work);
  if (none) return none;
  if (!settleNear(work, near)) return null;
  if (work.path.fans === null) return describeOutcome(work, []);
  const intersections = operatingPoints(work);
  return runsAtUsed(work, intersections) ? describeOutcome(work, intersections) : null;
}
