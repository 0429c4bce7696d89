import type { SinkOutcome } from './outcome.ts';

/** What a sensor on a sink reads, wherever it sits: mean of its plates; `null` where there is no sink. */
export function meanPlate_K(sink: SinkOutcome | null | undefined): number | null {
  if (!sink) return null;
  const { before_K, after_K } = sink;
  if (before_K === null) return after_K;
  return after_K === null ? before_K : 0.5 * (before_K + after_K);
}
