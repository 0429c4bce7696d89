import type { Factors } from '../../core/system/input.ts';
import type { LimitKey } from '../../core/system/outcome.ts';
import type { Judged, OutputKey } from '../outputs.ts';

/** A share with where the true one lies, at 95 % confidence. */
export interface ShareEstimate {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** One figure over all boxes that have an answer, SI. */
export interface FigureSpread {
  readonly key: OutputKey;
  readonly mean: number;
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
  /** Of the design as drawn; `null` where that has no answer. */
  readonly nominal: number | null;
}

export interface Histogram {
  /** Rising, equally far apart, at round numbers. */
  readonly edges: readonly number[];
  /** Boxes of each bin; what lies beyond the ends is counted in the last ones. */
  readonly holding: readonly number[];
  readonly failing: readonly number[];
}

/** How much of a result's variance goes with one variation alone. */
export interface Influence {
  /** Path of an input, or the factor of a method. */
  readonly of:
    | { readonly is: 'input'; readonly path: string }
    | { readonly is: 'method'; readonly factor: keyof Factors };
  /** First-order index (Sobol) of the hottest film's margin, and of whether a box holds; `null` where all or none hold. */
  readonly onMargin: number;
  readonly onHolding: number | null;
  /** Rank correlation with the margin: above nil where more of it leaves more to spare. Several draws: of the first of them. */
  readonly way: number;
}

/** All boxes of one batch hold. */
export interface Together extends ShareEstimate {
  readonly boxes: number;
  readonly batches: number;
}

export interface ToleranceResult {
  readonly seed: number;
  /** Built together. */
  readonly boxes: number;
  /** Drawn so far, and to be drawn. */
  readonly draws: number;
  readonly of: number;
  readonly holds: ShareEstimate;
  /** Share that holds with the spare asked for besides. */
  readonly withSpare: number;
  readonly noAnswer: number;
  /** Boxes that fail, by the limit that gives first; most first. */
  readonly failing: readonly { readonly limit: LimitKey; readonly count: number }[];
  readonly figures: readonly FigureSpread[];
  readonly margin: Histogram | null;
  /** Most first; empty while boxes are still being drawn. */
  readonly influences: readonly Influence[];
  /** Draws that these rest on. */
  readonly influenceDraws: number;
  /** `null` for boxes that are built one by one. */
  readonly together: Together | null;
  /** Boxes that could not be built as drawn and were brought back. */
  readonly moved: number;
  /** Numbers drawn for one box. */
  readonly dimensions: number;
  readonly nominal: Judged | null;
  /** Factors of methods that were drawn. */
  readonly methods: readonly (keyof Factors)[];
  /** Ids of cards whose scatter could not be drawn, for want of a factor. */
  readonly undrawn: readonly string[];
}
