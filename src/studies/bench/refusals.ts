import type { Known } from '../../core/solve/known.ts';
import type { Fit } from '../../core/solve/levenbergMarquardt.ts';
import type { SystemInput } from '../../core/system/input.ts';
import { mostUnknowns, type Reading, type Refusal, type Unknown } from './types.ts';
import { believable, coverage, fittedUnknowns } from './unknowns.ts';

/** What stands against a fit before anything is computed. */
export function refusedBefore(
  input: SystemInput,
  unknowns: readonly Unknown[],
  readings: readonly Reading[],
): Refusal | null {
  if (unknowns.length === 0) return { why: 'noUnknowns' };
  if (unknowns.length > mostUnknowns) return { why: 'tooManyUnknowns', most: mostUnknowns };
  const absent = unknowns.find((unknown) => fittedUnknowns[unknown].read(input) === null);
  if (absent) return { why: 'notInDesign', unknown: absent };
  if (readings.length < unknowns.length)
    return { why: 'tooFewReadings', used: readings.length, needed: unknowns.length };
  return null;
}

/**
 * What stands against what was found. First whether the readings tell the unknowns at all: a search that strays does so for
 * want of a slope, and that is the better reason – unless there was one where it began, and it ran on to where there is none.
 */
export function refusedAfter(fit: Fit, unknowns: readonly Unknown[]): Refusal | null {
  if (fit.end === 'noAnswer') return { why: 'notConverged' };
  const untold = refusedBy(fit.known, unknowns);
  const bounded = refusedAtBound(fit, unknowns);
  if (untold) return bounded && !refusedBy(fit.knownAtStart, unknowns) ? bounded : untold;
  if (fit.end === 'mostIterations' || fit.end === 'stuck') return { why: 'notConverged' };
  return bounded;
}

function refusedAtBound({ bound, parameters }: Fit, unknowns: readonly Unknown[]): Refusal | null {
  const at = bound.findIndex((side, i) => side !== 0 && !isNoLeak(unknowns[i], side));
  const unknown = unknowns[at];
  if (unknown === undefined) return null;
  return { why: 'atBound', unknown, bound: fittedUnknowns[unknown].toValue(parameters[at] as number) };
}

function isNoLeak(unknown: Unknown | undefined, side: number): boolean {
  return unknown === 'leak' && side < 0;
}

/** Which unknown the readings do not tell, or which two they do not tell apart. */
export function refusedBy(known: Known, unknowns: readonly Unknown[]): Refusal | null {
  const blind = unknowns.findIndex((_, i) => !(coverage * (known.alone[i] as number) < believable));
  const unknown = unknowns[blind];
  if (unknown !== undefined) return { why: 'insensitive', unknown };
  const isTold = unknowns.every((_, i) => coverage * (known.sigma[i] as number) < believable);
  if (isTold && known.rank === unknowns.length) return null;
  const [a, b] = mostMixed(known);
  return {
    why: 'notDistinguishable',
    unknowns: [unknowns[a] as Unknown, unknowns[b] as Unknown],
    alikeness: known.alikeness[a * unknowns.length + b] as number,
    direction: Array.from(known.weakest),
  };
}

/** The two unknowns that move the readings most, one against the other, along the way that is told least. */
function mostMixed({ weakest, alone }: Known): [number, number] {
  const order = Array.from(weakest, (part, i) => ({ i, moves: Math.abs(part) / (alone[i] as number) })).sort(
    (x, y) => y.moves - x.moves,
  );
  const [first, second] = order;
  return [first?.i ?? 0, second?.i ?? 0];
}
