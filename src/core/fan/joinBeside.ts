import type { Pchip } from '../solve/pchip.ts';
import { crossingAt, type FallingCurve, pressureOnPiece } from './fallingCurve.ts';

/** How far a cubic between two knots may be off, as a share of the range of pressures. */
const closeEnough = 1e-5;

/** Where on its way that is looked at: not at its middle, which a curve bent evenly to both sides passes however it bends. */
const lookedAt = [0.3, 0.65] as const;

/** Halvings of the stretch between two points of the curves. */
const mostHalvings = 8;

interface Knot {
  flow: number;
  dp_Pa: number;
  above: number;
  below: number;
}

/**
 * Fans side by side as one curve from `ceiling_Pa` down to `floor_Pa`: at every pressure their flows add. Joined at the
 * pressures of all their points, with the slopes that the curves have there, and at as many between as a close curve needs.
 * A bend of one curve is a bend of the joined one.
 */
export function joinBeside(curves: readonly FallingCurve[], ceiling_Pa: number, floor_Pa: number): Pchip {
  const slack_Pa = closeEnough * (ceiling_Pa - floor_Pa);
  const knots: Knot[] = [];
  for (const dp_Pa of levelsOf(curves, ceiling_Pa, floor_Pa)) {
    const here = knotsAt(curves, dp_Pa);
    const before = knots[knots.length - 1];
    if (before) knots.push(...knotsBetween(curves, before, here[0] as Knot, slack_Pa, mostHalvings));
    knots.push(...here);
  }
  const first = (knots[0] as Knot).flow;
  const blown = knots.filter(({ dp_Pa }) => dp_Pa >= 0);
  const span = (blown[blown.length - 1] as Knot).flow - first;
  const apart = 1e-7 * (span > 0 ? span : (knots[knots.length - 1] as Knot).flow - first);
  const kept: Knot[] = [];
  for (const knot of knots) {
    const before = kept[kept.length - 1];
    if (before && knot.flow - before.flow < apart) before.below = knot.below;
    else kept.push({ ...knot });
  }
  const end = kept.length - 1;
  return gentle(
    kept.flatMap((knot, i): Sloped[] => {
      if (i === 0) return [[knot.flow, knot.dp_Pa, knot.below]];
      return i === end ? [[knot.flow, knot.dp_Pa, knot.above]] : withoutBend(knot, 0.25 * apart);
    }),
  );
}

/** Pressures at which some curve has a point, falling. */
function levelsOf(curves: readonly FallingCurve[], ceiling_Pa: number, floor_Pa: number): number[] {
  const levels = new Set([ceiling_Pa, floor_Pa, 0]);
  for (const curve of curves) for (const { y0 } of curve) levels.add(y0);
  return Array.from(levels)
    .filter((dp_Pa) => dp_Pa <= ceiling_Pa && dp_Pa >= floor_Pa)
    .sort((a, b) => b - a);
}

/** Knots that the cubic from one knot to another needs for being close, by halves. */
function knotsBetween(
  curves: readonly FallingCurve[],
  from: Knot,
  to: Knot,
  slack_Pa: number,
  halvings: number,
): Knot[] {
  const cubic = {
    x0: from.flow,
    x1: to.flow,
    y0: from.dp_Pa,
    y1: to.dp_Pa,
    m0: from.below,
    m1: to.above,
  };
  const h = to.flow - from.flow;
  if (halvings === 0 || !(h > 0)) return [];
  const isOff = lookedAt.some((share) => {
    const dp_Pa = pressureOnPiece(cubic, share);
    if (!(dp_Pa < from.dp_Pa && dp_Pa > to.dp_Pa)) return from.dp_Pa - to.dp_Pa > slack_Pa;
    const [{ flow }] = knotsAt(curves, dp_Pa) as [Knot];
    return Math.abs(pressureOnPiece(cubic, (flow - from.flow) / h) - dp_Pa) > slack_Pa;
  });
  if (!isOff) return [];
  const half_Pa = pressureOnPiece(cubic, 0.5);
  const within = half_Pa < from.dp_Pa && half_Pa > to.dp_Pa;
  const [middle] = knotsAt(curves, within ? half_Pa : 0.5 * (from.dp_Pa + to.dp_Pa)) as [Knot];
  return [
    ...knotsBetween(curves, from, middle, slack_Pa, halvings - 1),
    middle,
    ...knotsBetween(curves, middle, to, slack_Pa, halvings - 1),
  ];
}

/** One knot, or two where some curve is level at this pressure. */
function knotsAt(curves: readonly FallingCurve[], dp_Pa: number): Knot[] {
  let least = 0;
  let most = 0;
  let above = 0;
  let below = 0;
  for (const curve of curves) {
    const at = crossingAt(curve, dp_Pa);
    least += at.least;
    most += at.most;
    above += 1 / Math.abs(at.above);
    below += 1 / Math.abs(at.below);
  }
  const left = -1 / above;
  const right = -1 / below;
  if (!(most > least)) return [{ flow: least, dp_Pa, above: left, below: right }];
  return [
    { flow: least, dp_Pa, above: left, below: 0 },
    { flow: most, dp_Pa, above: 0, below: right },
  ];
}

type Sloped = readonly [flow: number, dp_Pa: number, slope: number];

/** A bend becomes a bow between two knots close beside it, for a knot has one slope. */
function withoutBend({ flow, dp_Pa, above, below }: Knot, aside: number): Sloped[] {
  if (Math.abs(above - below) <= 1e-9 * Math.abs(above + below)) return [[flow, dp_Pa, above]];
  return [
    [flow - aside, dp_Pa - above * aside, above],
    [flow + aside, dp_Pa + below * aside, below],
  ];
}

/** Never rising, with slopes of at most three chords, so that no cubic between two knots swings beyond them. */
function gentle(knots: readonly Sloped[]): Pchip {
  const x = Float64Array.from(knots, ([flow]) => flow);
  const y = Float64Array.from(knots, ([, dp_Pa]) => dp_Pa);
  const slope = Float64Array.from(knots, ([, , own]) => own);
  for (let i = 0; i + 1 < knots.length; i++) {
    y[i + 1] = Math.min(y[i + 1] as number, y[i] as number);
    const chord = ((y[i + 1] as number) - (y[i] as number)) / ((x[i + 1] as number) - (x[i] as number));
    const steepest = Math.min(0, 3 * chord);
    slope[i] = Math.max(slope[i] as number, steepest);
    slope[i + 1] = Math.max(slope[i + 1] as number, steepest);
  }
  return { x, y, slope };
}
