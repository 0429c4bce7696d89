import { bankGeometry } from '../../core/system/geometry.ts';
import type { Design } from '../../model/design.ts';
import { toCore } from '../../model/toCore.ts';
import { hardOf } from './sizers.ts';

/** What the workshop can cut fins with, and what room they may take. */
export interface FinRules {
  /** Diameters of the end mills at hand; a slot between fins is not narrower than the one that cuts it. */
  readonly cutters_m: readonly number[];
  /** A slot is not deeper than this many diameters of its end mill. */
  readonly depthRatio: number;
  /** Thicknesses to choose from, of sheet or as set on the mill. */
  readonly thicknesses_m: readonly number[];
  /** No fin thinner than this. */
  readonly leastThickness_m: number;
  readonly leastHeight_m: number;
  readonly mostHeight_m: number;
  /** Bounds on what is chosen, `null` where there are none. */
  readonly mostSound_dBA: number | null;
  readonly mostPressure_Pa: number | null;
}

/**
 * Rules to begin with: the end mill that the panels are cut with, an ordinary one that reaches four diameters, stock
 * thicknesses that a mill leaves standing beside the present one, and all the height that the box has. Common practice, no source.
 */
export function usualRules(design: Design): FinRules {
  const { finThickness_m, finHeight_m } = design.sink;
  const [low_m, high_m] = hardOf('sink.finHeight_m');
  const inBox_m = Math.floor((heightInBox_m(design) * hair) / step_m) * step_m;
  const height_m = Number(Math.min(high_m, Math.max(low_m, inBox_m)).toPrecision(12));
  return {
    cutters_m: [design.cutting.cutter_m],
    depthRatio: millReach,
    thicknesses_m: [...new Set([finThickness_m, ...stock_m])].sort((a, b) => a - b),
    leastThickness_m: Math.min(finThickness_m, ...stock_m),
    leastHeight_m: Math.min(0.004, finHeight_m, height_m),
    mostHeight_m: height_m,
    mostSound_dBA: null,
    mostPressure_Pa: null,
  };
}

/** So many diameters deep an ordinary end mill cuts a slot; common practice, no source. */
export const millReach = 4;

const stock_m = [0.0008, 0.001, 0.0015, 0.002];

/** So many fins of one thickness across the sink, and how high they may be. */
export interface FinSet {
  readonly count: number;
  readonly thickness_m: number;
  readonly gap_m: number;
  readonly mostHeight_m: number;
}

/** Heights are told and cut to a tenth of a millimetre. */
export const step_m = 1e-4;
/** A measure that misses by a rounding error fits. */
const hair = 1 + 1e-9;

/** Every set of fins that the rules allow on sinks of the present width, thin fins first, then few. */
export function finSets(design: Design, rules: FinRules): FinSet[] {
  const cutters_m = [...new Set(rules.cutters_m)].sort((a, b) => b - a);
  const narrowest_m = cutters_m.at(-1);
  if (narrowest_m === undefined) return [];
  const inBox_m = Math.floor((heightInBox_m(design) * hair) / step_m) * step_m;
  const room_m = Math.min(rules.mostHeight_m, inBox_m);
  const { width_m } = design.sink;
  const thicknesses_m = [...new Set(rules.thicknesses_m)].filter(
    (thickness_m) => thickness_m * hair >= rules.leastThickness_m,
  );
  return thicknesses_m
    .sort((a, b) => a - b)
    .flatMap((thickness_m) => {
      const most = Math.floor(((width_m + narrowest_m) / (thickness_m + narrowest_m)) * hair);
      return Array.from({ length: Math.max(0, Math.min(most, mostFins) - 1) }, (_, i): FinSet => {
        const count = i + 2;
        const gap_m = (width_m - count * thickness_m) / (count - 1);
        return {
          count,
          thickness_m,
          gap_m,
          mostHeight_m: Math.min(room_m, depthOf_m(gap_m, cutters_m, rules.depthRatio)),
        };
      });
    })
    .filter(({ mostHeight_m }) => mostHeight_m * hair >= rules.leastHeight_m);
}

const mostFins = 200;

/** How deep a slot of this width is cut by the widest end mill that goes into it; nil where none does. */
export function depthOf_m(gap_m: number, cutters_m: readonly number[], depthRatio: number): number {
  return cutters_m.reduce(
    (most, cutter_m) => (cutter_m <= gap_m * hair ? Math.max(most, cutter_m * depthRatio) : most),
    0,
  );
}

/** The highest fins with which the row still goes into the box, its end clearances kept. */
export function heightInBox_m(design: Design): number {
  const { row_m, present } = bankGeometry(toCore(design));
  const { box, baffle, sink } = design;
  const spare_m = box.length_m - row_m - (baffle.fitted ? 2 * baffle.endClearance_m : 0);
  return sink.finHeight_m + spare_m / Math.max(1, present.filter(Boolean).length);
}
