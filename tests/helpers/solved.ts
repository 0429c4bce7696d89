import { ordinaryRun, type Run, type SystemInput } from '../../src/core/system/input.ts';
import type { Solved } from '../../src/core/system/outcome.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { type Trust, trustOf } from '../../src/core/system/trust.ts';

/** The answer of a box that must have one. */
export function solved(input: SystemInput, run: Run = ordinaryRun): Solved {
  const outcome = solveSystem(input, run);
  if (!outcome.ok) throw new Error(`no answer: ${outcome.reason}`);
  return outcome;
}

/** Notes and methods of a box that must have an answer. */
export function trusted(input: SystemInput, run: Run = ordinaryRun): Trust {
  solved(input, run);
  return trustOf(input, run);
}

/** The same box with another fan curve, in m³/h and Pa. */
export function withFan(
  input: SystemInput,
  points: readonly (readonly [flow_m3PerH: number, dp_Pa: number])[],
): SystemInput {
  const curve = points.map(([flow_m3PerH, dp_Pa]) => ({ flow_m3PerS: flow_m3PerH / 3600, dp_Pa }));
  return { ...input, fan: { ...input.fan, curve } };
}

/** A fan with a dip that meets the box of `sampleInput` three times. */
export const dippingFan = [
  [0, 50],
  [9.2, 36],
  [18.4, 18],
  [20.7, 30],
  [27.6, 29],
  [36.8, 17],
  [46, 0],
] as const;
