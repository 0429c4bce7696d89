import type { Path } from './path.ts';

/** What each finding of `checkDesign` carries: the value that is, and what would be allowed. */
export interface ProblemData {
  readonly bankTooLong: { readonly needed_m: number; readonly available_m: number };
  readonly bankTooWide: { readonly needed_m: number; readonly available_m: number };
  readonly endClearanceTooWide: { readonly most_m: number };
  readonly sideClearanceTooWide: { readonly most_m: number };
  readonly finsTooMany: { readonly most: number; readonly gap_m: number; readonly smallest_m: number };
  readonly finsTooThick: { readonly most_m: number };
  readonly slotTooWide: { readonly most_m: number };
  readonly collarTooHigh: { readonly most_m: number };
  readonly chipTooLong: { readonly most_m: number };
  readonly chipTooWide: { readonly most_m: number };
  readonly deratingReversed: { readonly fullPowerUpTo_K: number };
  readonly filamentTooLong: { readonly most_m: number };
  readonly tabsTooWide: { readonly most_m: number; readonly beside: number };
  readonly terminalTooLong: { readonly most_m: number };
  readonly landingTooLarge: { readonly most_m: number };
  readonly hubTooLarge: { readonly opening_m: number };
  readonly openingTooLarge: { readonly size_m: number };
  readonly partMissing: { readonly parts: number };
  readonly flowNotRising: { readonly before_m3PerS: number };
  readonly flowTwice: { readonly before_m3PerS: number };
  readonly shutOffWithoutPressure: Readonly<Record<never, never>>;
  readonly endPressureNotLowest: { readonly below_Pa: number };
  readonly lossNotRising: { readonly before_Pa: number };
  readonly lossAtRest: Readonly<Record<never, never>>;
  readonly onePoint: Readonly<Record<never, never>>;
  readonly spreadOfNothing: Readonly<Record<never, never>>;
  readonly spreadTwice: Readonly<Record<never, never>>;
  readonly spreadWithoutTolerance: Readonly<Record<never, never>>;
}

export type ProblemCode = keyof ProblemData;

/** A value that is possible by itself and impossible beside the others, at the field that says it. */
export type Problem<C extends ProblemCode = ProblemCode> = {
  readonly [K in C]: { readonly path: Path; readonly code: K; readonly data: ProblemData[K] };
}[C];

export function problem<C extends ProblemCode>(path: Path, code: C, data: ProblemData[C]): Problem {
  // The mapped union cannot be inferred from a generic code; the signature above pairs code and data.
  return { path, code, data } as Problem;
}
