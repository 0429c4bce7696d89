import { ordinaryRun } from '../../core/system/input.ts';
import { solveSystem } from '../../core/system/solveSystem.ts';
import { checkDesign } from '../../model/check.ts';
import type { Design } from '../../model/design.ts';
import type { Problem } from '../../model/problem.ts';
import { toCore } from '../../model/toCore.ts';
import type { Job } from '../job.ts';
import { judgedOf, type Outputs } from '../outputs.ts';
import { pulseSwing } from '../ratedLoad.ts';
import { type Trial, tryValues, withValues } from '../vary.ts';
import { contourLines, type Point } from './contour.ts';
import { type GapKey, gapRoom, gapValues, presentGap_m } from './gap.ts';
import { type Reserve, reserveOf } from './reserve.ts';

export interface GapAxis {
  readonly gap: GapKey;
  /** Rising, each once, inside the hard limits of the gap. What the design has now is always taken besides. */
  readonly values_m: readonly number[];
}

/** What becomes of a design as two gaps of its baffle are cut one way or another. */
export interface GapMapQuestion {
  readonly design: Design;
  readonly x: GapAxis;
  /** Another gap than `x`. */
  readonly y: GapAxis;
}

/** One pair of gaps. */
export type GapNode =
  | { readonly ok: true; readonly outputs: Outputs; readonly reserve: Reserve }
  | { readonly ok: false; readonly problem: Problem | null };

/** A line of the grid. */
export interface GridLine {
  readonly at_m: number;
  /** Asked for, or what the design has now; the others only make the map finer. */
  readonly isRow: boolean;
}

interface GapMapEnds {
  readonly present: Trial | null;
  readonly none: Trial;
}

export type GapMapPiece = GapMapEnds | readonly GapNode[];

export interface GapMap extends GapMapEnds {
  readonly xs: readonly GridLine[];
  readonly ys: readonly GridLine[];
  /** `nodes[y][x]`; shorter while it is being computed. */
  readonly nodes: readonly (readonly GapNode[])[];
  /** Where the box stops holding, and where it begins to have little to spare; in metres. */
  readonly failLines: readonly (readonly Point[])[];
  readonly littleLines: readonly (readonly Point[])[];
}

/** Spaces between the lines of the grid, about. */
const spaces = 20;

export const gapMapJob: Job<GapMapQuestion, GapMapPiece, GapMap> = {
  count: (question) => 1 + gridLines(question.design, question.y).length,
  piece: (question, index) => (index === 0 ? ends(question) : row(question, index - 1)),
  gather: ({ design, x, y }, pieces) => {
    const [first, ...nodes] = pieces as readonly [GapMapEnds, ...(readonly GapNode[])[]];
    const xs = gridLines(design, x);
    const ys = gridLines(design, y);
    const lines = (of: (reserve: Reserve) => number) =>
      contourLines(
        {
          xs: xs.map(({ at_m }) => at_m),
          ys: ys.slice(0, nodes.length).map(({ at_m }) => at_m),
          values: nodes.map((line) => line.map((node) => (node.ok ? of(node.reserve) : null))),
        },
        0,
      );
    return {
      ...first,
      xs,
      ys,
      nodes,
      failLines: lines(({ toFail }) => toFail),
      littleLines: lines(({ toLittle }) => toLittle),
    };
  },
};

/** The values asked for, what the design has now, the last that can be built, and even steps between them. */
export function gridLines(design: Design, { gap, values_m }: GapAxis): GridLine[] {
  const present_m = presentGap_m(design, gap);
  const rows = [...values_m, ...(present_m === null ? [] : [present_m])].sort((a, b) => a - b);
  const [first_m, last_m] = [rows[0] ?? 0, rows.at(-1) ?? 0];
  const edges = Object.values(gapRoom(design, gap)).filter((at_m) => at_m > first_m && at_m < last_m);
  const knots = [
    ...rows.map((at_m) => ({ at_m, isRow: true })),
    ...edges.map((at_m) => ({ at_m, isRow: false })),
  ]
    .sort((a, b) => a.at_m - b.at_m || Number(b.isRow) - Number(a.isRow))
    .filter(({ at_m }, i, all) => i === 0 || at_m - (all[i - 1] as GridLine).at_m > 1e-9);
  return knots.flatMap((from, i) => {
    const to_m = knots[i + 1]?.at_m ?? from.at_m;
    const count = Math.max(1, Math.round((spaces * (to_m - from.at_m)) / Math.max(last_m - first_m, 1e-9)));
    const between = Array.from({ length: count - 1 }, (_, k) => ({
      at_m: from.at_m + ((to_m - from.at_m) * (k + 1)) / count,
      isRow: false,
    }));
    return [from, ...between];
  });
}

function ends({ design, x }: GapMapQuestion): GapMapEnds {
  return {
    present: design.baffle.fitted ? tryValues(design, {}, ordinaryRun) : null,
    none: tryValues(design, gapValues(x.gap, null), ordinaryRun),
  };
}

function row({ design, x, y }: GapMapQuestion, index: number): GapNode[] {
  const at_m = (gridLines(design, y)[index] as GridLine).at_m;
  const swing = swingOf(design);
  const cut = withValues(design, gapValues(y.gap, at_m));
  return gridLines(design, x).map((line) => nodeOf(withValues(cut, gapValues(x.gap, line.at_m)), swing));
}

/** Of films in pulses, at the design as it stands: gaps hardly matter to it, and following pulses is most of the work. */
function swingOf(design: Design): number {
  if (design.load.duty >= 1) return 1;
  const outcome = solveSystem(toCore(design), ordinaryRun);
  return outcome.ok ? pulseSwing(outcome) : 1;
}

function nodeOf(design: Design, swing: number): GapNode {
  const [problem] = checkDesign(design);
  if (problem) return { ok: false, problem };
  const outcome = solveSystem(toCore(design), { ...ordinaryRun, pulses: false });
  const outputs = judgedOf(outcome)?.outputs;
  if (!outcome.ok || !outputs) return { ok: false, problem: null };
  const reserve = reserveOf(
    outcome,
    { spareFactor: design.limits.spareFactor, glassTransition_K: design.bond.glassTransition_K },
    swing,
  );
  return { ok: true, outputs, reserve };
}
