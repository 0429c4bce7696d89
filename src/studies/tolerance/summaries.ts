import { countInBins, roundEdges } from '../../core/solve/histogram.ts';
import { quantile } from '../../core/solve/quantile.ts';
import { sampleSummary } from '../../core/solve/sampleSummary.ts';
import type { OutputKey } from '../outputs.ts';
import type { FigureSpread, Histogram } from './result.ts';

/** @returns `null` where no box has an answer */
export function figureSpread(
  key: OutputKey,
  values: Float64Array,
  nominal: number | null,
): FigureSpread | null {
  const summary = sampleSummary(values);
  if (summary === null) return null;
  const at = (share: number) => quantile(summary.sorted, share);
  return { key, mean: summary.mean, p5: at(0.05), p50: at(0.5), p95: at(0.95), nominal };
}

const mostBins = 30;

/** Ends beyond which one box in two hundred lies are counted in the last bins. @param holds 1 where the box of this value holds */
export function histogram(values: Float64Array, holds: Uint8Array): Histogram | null {
  const summary = sampleSummary(values);
  if (summary === null) return null;
  const [low, high] = [quantile(summary.sorted, 0.0025), quantile(summary.sorted, 0.9975)];
  const edges = roundEdges(low, high, mostBins);
  const where = (is: boolean) => values.filter((_, i) => (holds[i] === 1) === is);
  return { edges, holding: countInBins(where(true), edges), failing: countInBins(where(false), edges) };
}
