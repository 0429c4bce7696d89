import type { GapLine } from './gapLine.ts';
import { type GapState, rank, stateOf } from './verdictChanges.ts';

/** Gaps that come to the same verdict. */
export interface VerdictSpan {
  readonly from_m: number;
  readonly to_m: number;
  readonly state: GapState;
}

/** All that was looked at, cut where the verdict changes; empty where nothing can be built. */
export function verdictSpans({ looked_m, changes, points }: GapLine): VerdictSpan[] {
  const [least_m, most_m] = looked_m;
  if (changes.length === 0) {
    const state = points.map(({ trial }) => stateOf(trial)).find((each) => each !== null);
    return state ? [{ from_m: least_m, to_m: most_m, state }] : [];
  }
  const spans = changes.map(({ before_m, from }, i) => ({
    from_m: changes[i - 1]?.after_m ?? least_m,
    to_m: before_m,
    state: from,
  }));
  const last = changes.at(-1);
  return last ? [...spans, { from_m: last.after_m, to_m: most_m, state: last.to }] : spans;
}

/** What ends a range of gaps: the film grows hotter, the verdict another, nothing beyond can be built, or was drawn. */
export type RangeEnd = 'film' | 'verdict' | 'room' | 'curve';

/** Gaps of one verdict at which the film stays near the coolest among them. */
export interface GoodGaps {
  readonly span: VerdictSpan;
  readonly from_m: number;
  readonly to_m: number;
  readonly below: RangeEnd;
  readonly above: RangeEnd;
  readonly coolest: { readonly at_m: number; readonly film_K: number };
  /** Over the range. */
  readonly hottest_K: number;
}

/**
 * The good gaps of the best verdict on the curve: of several spans the one that holds `near_m`, or else comes nearest.
 * @returns `null` where no value has an answer
 */
export function goodGaps(line: GapLine, near_m: number, within_K: number): GoodGaps | null {
  const spans = verdictSpans(line).flatMap((span) => goodIn(line, span, within_K) ?? []);
  const best = Math.max(...spans.map(({ span }) => rank[span.state]));
  const away = ({ span }: GoodGaps) => Math.max(0, span.from_m - near_m, near_m - span.to_m);
  return spans
    .filter(({ span }) => rank[span.state] === best)
    .reduce<GoodGaps | null>((a, b) => (a && away(a) <= away(b) ? a : b), null);
}

/** @returns `null` where the curve has no point in the span */
function goodIn({ points, room }: GapLine, span: VerdictSpan, within_K: number): GoodGaps | null {
  const curve = points.flatMap(({ at_m, trial }) =>
    trial.ok && at_m >= span.from_m && at_m <= span.to_m ? [{ at_m, film_K: trial.outputs.film_K }] : [],
  );
  const coolest = curve.reduce<(typeof curve)[number] | null>(
    (a, b) => (a && a.film_K <= b.film_K ? a : b),
    null,
  );
  if (coolest === null) return null;
  const most_K = coolest.film_K + within_K;
  const [first, last] = [points[0], points.at(-1)];
  const reach = (step: 1 | -1): { at_m: number; end: RangeEnd } => {
    for (let i = curve.indexOf(coolest); ; i += step) {
      const here = curve[i] ?? coolest;
      const next = curve[i + step];
      if (!next) {
        const end_m = step > 0 ? span.to_m : span.from_m;
        const isInside = end_m > (first?.at_m ?? 0) && end_m < (last?.at_m ?? 0);
        if (isInside) return { at_m: end_m, end: 'verdict' };
        const isRoom = step > 0 ? here.at_m >= room.most_m - 1e-9 : here.at_m <= room.least_m + 1e-9;
        return { at_m: here.at_m, end: isRoom ? 'room' : 'curve' };
      }
      if (next.film_K <= most_K) continue;
      const share = (most_K - here.film_K) / (next.film_K - here.film_K);
      return { at_m: here.at_m + share * (next.at_m - here.at_m), end: 'film' };
    }
  };
  const [below, above] = [reach(-1), reach(1)];
  const inside = curve.filter(({ at_m }) => at_m >= below.at_m && at_m <= above.at_m);
  return {
    span,
    from_m: below.at_m,
    to_m: above.at_m,
    below: below.end,
    above: above.end,
    coolest,
    hottest_K: Math.max(...inside.map(({ film_K }) => film_K)),
  };
}
