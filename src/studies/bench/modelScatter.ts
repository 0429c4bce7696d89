import type { SystemInput } from '../../core/system/input.ts';
import { methodScatter, soundSigma } from '../../core/system/methodScatter.ts';
import { trustOf } from '../../core/system/trust.ts';
import type { Design } from '../../model/design.ts';
import type { Group } from './benchModel.ts';
import { fittedSigmas } from './fittedSigmas.ts';
import type { BenchCheckResult, Computed, ModelPart } from './types.ts';
import { fittedUnknowns, sigmaOf } from './unknowns.ts';

/** What scatters the values computed for one group of readings. */
export type Parts = BenchCheckResult['parts'];

/** Change of every reading of a group with one standard deviation of one part. */
export interface Swing {
  readonly part: ModelPart;
  readonly moves: readonly number[];
}

/** Methods that the answer under these conditions rests on, with their scatter, and the leak where it was fitted. */
export function partsOf(design: Design, { bench, readings }: Group): Parts {
  if (!bench) return [];
  const { used } = trustOf(bench.input, bench.run);
  const methods = methodScatter(used, fittedSigmas(design)).map(({ factor, sigma, fitted }) => ({
    part: factor,
    sigma,
    fitted,
  }));
  const { leakWithin_m } = design.fitted;
  const hasLeak = leakWithin_m > 0 && design.baffle.fitted;
  const leak = { part: 'leak', sigma: sigmaOf('leak', leakWithin_m) / 1000, fitted: true } as const;
  const isHeard = bench.run.fans === 'running' && readings.some(({ kind }) => kind === 'sound');
  const sound = { part: 'sound', sigma: soundSigma, fitted: false } as const;
  return [...methods, ...(hasLeak ? [leak] : []), ...(isHeard ? [sound] : [])];
}

/**
 * To first order, by central differences of one standard deviation either way; along a course of temperatures, which costs a
 * hundred times as much, to one side.
 */
export function swingsOf(
  input: SystemInput,
  group: Group,
  parts: Parts,
  present: readonly Computed[],
): Swing[] {
  const isCourse = group.readings.some(({ time_s }) => time_s !== null);
  return parts.map(({ part, sigma }) => {
    if (part === 'sound') return { part, moves: soundMoves(group, present, sigma) };
    const above = group.compute(shifted(input, part, sigma));
    const below = isCourse ? present : group.compute(shifted(input, part, -sigma));
    const width = 1 + (isCourse ? 0 : way(input, part, sigma));
    const moves = above.map(({ value }, i) => {
      const other = below[i]?.value ?? null;
      return value === null || other === null ? 0 : (value - other) / width;
    });
    return { part, moves };
  });
}

/** What a fan sounds like at a speed of its own is no factor of the networks; its card states a share of the level. */
function soundMoves({ readings }: Group, present: readonly Computed[], sigma: number): number[] {
  return readings.map(({ kind }, i) => (kind === 'sound' ? sigma * (present[i]?.value ?? 0) : 0));
}

/** A part that the networks know. */
type Movable = Exclude<ModelPart, 'sound'>;

function shifted(input: SystemInput, part: Movable, sigma: number): SystemInput {
  if (part !== 'leak') {
    const factors = { ...input.factors, [part]: input.factors[part] * Math.exp(sigma) };
    return { ...input, factors };
  }
  const { read, write } = fittedUnknowns.leak;
  return write(input, Math.max(0, (read(input) ?? 0) + 1000 * sigma));
}

/** How far down a part may go, in standard deviations, one at most: less leak than none there is not. */
function way({ baffle }: SystemInput, part: Movable, sigma: number): number {
  return part === 'leak' ? Math.min(1, (baffle?.leakGap_m ?? 0) / sigma) : 1;
}
