import { type LeastSquares, levenbergMarquardt } from '../../core/solve/levenbergMarquardt.ts';
import type { SystemInput } from '../../core/system/input.ts';
import { toCore } from '../../model/toCore.ts';
import type { Job } from '../job.ts';
import { benchModel } from './benchModel.ts';
import { chiSquareOf } from './chiSquareOf.ts';
import { fittedReadings, fittedValue } from './fitResult.ts';
import { readingsOf, tellsOfUnknowns } from './readingsOf.ts';
import { refusedAfter, refusedBefore } from './refusals.ts';
import type {
  BenchFitQuestion,
  BenchFitResult,
  ChiSquare,
  Computed,
  Reading,
  Refusal,
  Unknown,
} from './types.ts';
import { coverage, fittedUnknowns } from './unknowns.ts';

/** Scatter of readings that chance alone brings as often as this is no reason to doubt their instruments. */
const improbable = 0.05;
/** A leak is looked for from here on where the design has less: from nothing at all there is no slope to follow. */
const firstLeak = 0.05;
const mostIterations = 40;

/** Fits up to three unknowns of a box to the readings of its prototype: least squares, each reading by its instrument. */
export function benchFit({ design, unknowns }: BenchFitQuestion): BenchFitResult {
  const input = toCore(design);
  const all = readingsOf(design);
  const readings = all.filter(tellsOfUnknowns);
  const empty = nothingFitted(unknowns, all);
  const early = refusedBefore(input, unknowns, readings);
  if (early) return { ...empty, refused: early };

  const middle = startOf(input, unknowns);
  const model = benchModel(middle, readings);
  const present = model.compute(input);
  const before = chiSquareOf(readings, present, 0);
  const refuse = (refused: Refusal): BenchFitResult => ({ ...empty, before, refused });
  const missing = present.findIndex(({ value }) => value === null);
  if (missing >= 0) {
    const { index } = readings[missing] as Reading;
    return refuse({ why: 'noAnswer', reading: index, noAnswer: present[missing]?.why ?? 'notFollowed' });
  }

  const problem = leastSquares(middle, unknowns, readings, model.compute);
  const fit = levenbergMarquardt(problem);
  const late = refusedAfter(fit, unknowns);
  if (late) return refuse(late);
  const computed = model.compute(written(middle, unknowns, fit.parameters));
  const after = chiSquareOf(readings, computed, unknowns.length);
  const doubtful = after.chance !== null && after.chance < improbable;
  const birge = doubtful ? Math.sqrt(after.value / after.degrees) : 1;
  const values = unknowns.map((unknown, i) => fittedValue(input, unknown, { problem, fit, i, birge }));
  return {
    unknowns,
    refused: null,
    values,
    correlation: unknowns.map((_, i) =>
      unknowns.map((_, j) => fit.known.correlation[i * unknowns.length + j] as number),
    ),
    readings: fittedReadings(readings, present, computed, fit, birge),
    leftOut: empty.leftOut,
    before,
    after,
    birge,
    coverage,
    iterations: fit.iterations,
    solves: fit.evaluations,
  };
}

/** One piece: a fit is a chain of steps. A dozen settled readings take a tenth of a second, courses of temperatures some more. */
export const benchFitJob: Job<BenchFitQuestion, BenchFitResult, BenchFitResult> = {
  count: () => 1,
  piece: benchFit,
  gather: (_, [result]) => result as BenchFitResult,
};

function leastSquares(
  middle: SystemInput,
  unknowns: readonly Unknown[],
  readings: readonly Reading[],
  compute: (box: SystemInput) => Computed[],
): LeastSquares {
  const kinds = unknowns.map((unknown) => fittedUnknowns[unknown]);
  return {
    count: readings.length,
    start: kinds.map(({ read }) => read(middle) ?? 0),
    low: kinds.map(({ low }) => low),
    high: kinds.map(({ high }) => high),
    differences: kinds.map(({ step }) => step),
    mostIterations,
    // Far below what any reading tells, and above what settling leaves.
    tolerance: 1e-5,
    residuals: (parameters, out) => {
      const values = compute(written(middle, unknowns, parameters));
      return readings.every(({ value: read, within }, i) => {
        const value = values[i]?.value ?? null;
        if (value === null) return false;
        out[i] = (2 * (value - read)) / within;
        return true;
      });
    },
  };
}

function startOf(input: SystemInput, unknowns: readonly Unknown[]): SystemInput {
  if (!unknowns.includes('leak')) return input;
  const { read, write } = fittedUnknowns.leak;
  return write(input, Math.max(firstLeak, read(input) ?? 0));
}

function written(input: SystemInput, unknowns: readonly Unknown[], fitted: ArrayLike<number>): SystemInput {
  return unknowns.reduce((box, unknown, i) => fittedUnknowns[unknown].write(box, fitted[i] as number), input);
}

function nothingFitted(unknowns: readonly Unknown[], all: readonly Reading[]): BenchFitResult {
  const none: ChiSquare = { value: 0, degrees: 0, chance: null };
  return {
    unknowns,
    refused: null,
    values: [],
    correlation: [],
    readings: [],
    leftOut: all.filter((reading) => !tellsOfUnknowns(reading)).map(({ index }) => index),
    before: none,
    after: none,
    birge: 1,
    coverage,
    iterations: 0,
    solves: 0,
  };
}
