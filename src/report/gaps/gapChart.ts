import type { Design } from '../../model/design.ts';
import { fieldAt } from '../../model/fields.ts';
import { gapPath, presentGap_m } from '../../studies/gaps/gap.ts';
import type { GapLine, GapQuestion } from '../../studies/gaps/gapLine.ts';
import { verdictSpans } from '../../studies/gaps/regions.ts';
import type { GapState } from '../../studies/gaps/verdictChanges.ts';
import { amount, unitOf } from '../format.ts';
import type { UnitSystem } from '../types.ts';
import { verdictWords } from '../wording.ts';
import { roundTicks, temperature } from '../words.ts';
import { gapSize } from './gapWords.ts';

interface FilmPoint {
  readonly x: number;
  /** `null` where there is no answer. */
  readonly film: number | null;
  /** Coldest and hottest with the cut off either way. */
  readonly band: readonly [number, number] | null;
}

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly label: string;
}

/** Hottest film over one gap, in the display units named beside it. */
export interface GapChart {
  readonly caption: string;
  readonly xLabel: string;
  readonly xUnit: string;
  readonly yUnit: string;
  readonly points: readonly FilmPoint[];
  /** Values asked for. */
  readonly rows: readonly Spot[];
  readonly present: Spot | null;
  readonly knee: Spot | null;
  /** The film without a baffle. */
  readonly none: { readonly y: number; readonly label: string } | null;
  /** Not drawn to scale where it lies far above everything else: then `isAbove`. */
  readonly limit: { readonly y: number; readonly label: string; readonly isAbove: boolean };
  readonly spans: readonly {
    readonly from: number;
    readonly to: number;
    readonly state: GapState;
    readonly word: string;
  }[];
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly spoken: string;
}

export function gapChart(question: GapQuestion, line: GapLine, system: UnitSystem): GapChart | null {
  const { design, gap } = question;
  const x = (at_m: number) => amount(at_m, 'length', system);
  const y = (T_K: number) => amount(T_K, 'temperature', system);
  const points = line.points.map(({ at_m, trial, band_K }) => ({
    x: x(at_m),
    film: trial.ok ? y(trial.outputs.film_K) : null,
    band: band_K && ([y(band_K[0]), y(band_K[1])] as const),
  }));
  const answered = line.points.flatMap(({ at_m, isRow, trial }) =>
    trial.ok ? [{ at_m, isRow, film_K: trial.outputs.film_K }] : [],
  );
  const [first, last] = [answered[0], answered.at(-1)];
  if (!first || !last) return null;
  const spot = ({ at_m, film_K }: { at_m: number; film_K: number }): Spot => ({
    x: x(at_m),
    y: y(film_K),
    label: gapSize(at_m, system),
  });
  const present_m = presentGap_m(design, gap);
  const present = answered.find(({ at_m }) => at_m === present_m);
  const none = line.none.ok ? line.none.outputs.film_K : null;
  const scale = heights(design, line, none);
  return {
    caption: scale.isAbove
      ? `Hottest film (its limit, ${temperature(scale.limit_K, system)}, lies above)`
      : 'Hottest film',
    xLabel: fieldAt(gapPath(gap)).label.toLowerCase(),
    xUnit: unitOf('length', system),
    yUnit: unitOf('temperature', system),
    points,
    rows: answered.filter(({ isRow }) => isRow).map(spot),
    present: present ? { ...spot(present), label: `now ${gapSize(present.at_m, system)}` } : null,
    knee: line.knee && { ...spot({ at_m: line.knee.x, film_K: line.knee.y }), label: 'knee' },
    none: none === null ? null : { y: y(none), label: `no baffle, ${temperature(none, system)}` },
    limit: {
      y: y(scale.limit_K),
      label: `film limit ${temperature(scale.limit_K, system)}`,
      isAbove: scale.isAbove,
    },
    spans: verdictSpans(line)
      .map(({ from_m, to_m, state }) => ({
        from: x(Math.max(from_m, line.points[0]?.at_m ?? 0)),
        to: x(Math.min(to_m, line.points.at(-1)?.at_m ?? 0)),
        state,
        word: verdictWords[state],
      }))
      .filter(({ from, to }) => to > from),
    xTicks: roundTicks(points[0]?.x ?? 0, points.at(-1)?.x ?? 1),
    yTicks: roundTicks(y(scale.low_K), y(scale.high_K)),
    spoken: spokenOf(first, last, line, system),
  };
}

/** What the vertical axis has to show: curve, band, the level without a baffle, and the limit unless it is far off. */
function heights(design: Design, { points }: GapLine, none_K: number | null) {
  const films = points.flatMap(({ trial, band_K }) =>
    trial.ok ? [trial.outputs.film_K, ...(band_K ?? [])] : [],
  );
  const low_K = Math.min(...films, none_K ?? Number.POSITIVE_INFINITY);
  const high_K = Math.max(...films, none_K ?? Number.NEGATIVE_INFINITY);
  const limit_K = lowestLimit_K(design);
  const isAbove = limit_K > high_K + Math.max(high_K - low_K, 10);
  return { low_K, high_K: isAbove ? high_K : Math.max(high_K, limit_K), limit_K, isAbove };
}

/** Of the parts that sit in the row. */
function lowestLimit_K({ positions, parts }: Design): number {
  return Math.min(...positions.flatMap(({ part }) => parts[part]?.zeroPowerAt_K ?? []));
}

function spokenOf(
  first: { readonly at_m: number; readonly film_K: number },
  last: { readonly at_m: number; readonly film_K: number },
  { none }: GapLine,
  system: UnitSystem,
): string {
  const said = ({ at_m, film_K }: typeof first) =>
    `${temperature(film_K, system)} at ${gapSize(at_m, system)}`;
  const without = none.ok ? `, ${temperature(none.outputs.film_K, system)} without a baffle` : '';
  return `Hottest film: ${said(first)}, ${said(last)}${without}.`;
}
