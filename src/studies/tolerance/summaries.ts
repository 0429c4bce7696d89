import { quantile } from '../../core/solve/quantile.ts';
import type { OutputKey } from '../outputs.ts';
import type { FigureSpread, Histogram } from './result.ts';

/** @param values of boxes that have an answer; not empty */
export function figureSpread(key: OutputKey, values: Float64Array, nominal: number | null): FigureSpread {
  const sorted = values.slice().sort();
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const at = (share: number) => quantile(sorted, share);
  return { key, mean, p5: at(0.05), p50: at(0.5), p95: at(0.95), nominal };
}

const aboutBins = 24;

/** @param holds 1 where the box of this value holds; as long as `values` */
export function histogram(values: Float64Array, holds: Uint8Array): Histogram {
  const sorted = values.slice().sort();
  const [first, last] = [quantile(sorted, 0.002), quantile(sorted, 0.998)];
  const width = roundStep((last - first) / aboutBins, Math.max(Math.abs(first), Math.abs(last)));
  const low = Math.floor(first / width) * width;
  const bins = Math.max(1, Math.ceil((last - low) / width - 1e-9));
  const holding = new Array<number>(bins).fill(0);
  const failing = new Array<number>(bins).fill(0);
  for (let i = 0; i < values.length; i++) {
    const bin = Math.min(bins - 1, Math.max(0, Math.floor(((values[i] as number) - low) / width)));
    const side = holds[i] ? holding : failing;
    side[bin] = (side[bin] as number) + 1;
  }
  return { low, width, holding, failing };
}

/** 1, 2, 2.5 or 5 of a decade, not below. Values that are all the same get a width beside which they are one. */
function roundStep(least: number, size: number): number {
  const rough = Math.max(least, 1e-6 * size, 1e-9);
  const decade = 10 ** Math.floor(Math.log10(rough));
  return ([1, 2, 2.5, 5].find((step) => step * decade >= rough * (1 - 1e-9)) ?? 10) * decade;
}
