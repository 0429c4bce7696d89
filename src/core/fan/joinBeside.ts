import type { Pchip } from '../solve/pchip.ts';
import { crossingAt, type FallingCurve, pressureOnPiece } from './fallingCurve.ts';

/** Levels of pressure that a piece of a curve between two of its points is divided by. */
const divisions = 6;

interface Knot {
  flow: number;
  dp_Pa: number;
  above: number;
  below: number;
}

/**
 * Fans side by side as one curve from `ceiling_Pa` down to `floor_Pa`: at every pressure their flows add. Joined at the
 * pressures of all their points and some between, with the slopes that the curves have there, so that the cubics between
 * stay close; a bend of one curve is a bend of the joined one.
 */
export function joinBeside(curves: readonly FallingCurve[], ceiling_Pa: number, floor_Pa: number): Pchip {
  const knots = levelsOf(curves, ceiling_Pa, floor_Pa).flatMap((dp_Pa) => knotsAt(curves, dp_Pa));
  const span = (knots[knots.length - 1] as Knot).flow - (knots[0] as Knot).flow;
  const apart = 1e-6 * span;
  const kept: Knot[] = [];
  for (const knot of knots) {
    const before = kept[kept.length - 1];
    if (before && knot.flow - before.flow < apart) before.below = knot.below;
    else kept.push({ ...knot });
  }
  return gentle(kept.flatMap((knot) => withoutBend(knot, 0.25 * apart)));
}

function levelsOf(curves: readonly FallingCurve[], ceiling_Pa: number, floor_Pa: number): number[] {
  const levels = new Set([ceiling_Pa, floor_Pa]);
  const add = (dp_Pa: number) => {
    if (dp_Pa < ceiling_Pa && dp_Pa > floor_Pa) levels.add(dp_Pa);
  };
  add(0);
  for (const curve of curves) {
    for (const piece of curve) {
      add(piece.y0);
      if (piece.y0 > piece.y1)
        for (let i = 1; i < divisions; i++) add(pressureOnPiece(piece, i / divisions));
    }
  }
  return Array.from(levels).sort((a, b) => b - a);
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

/** Slopes of at most three chords, so that no cubic between two knots swings beyond them. */
function gentle(knots: readonly Sloped[]): Pchip {
  const x = Float64Array.from(knots, ([flow]) => flow);
  const y = Float64Array.from(knots, ([, dp_Pa]) => dp_Pa);
  const slope = Float64Array.from(knots, ([, , own]) => own);
  for (let i = 0; i + 1 < knots.length; i++) {
    const chord = ((y[i + 1] as number) - (y[i] as number)) / ((x[i + 1] as number) - (x[i] as number));
    const steepest = Math.min(0, 3 * chord);
    slope[i] = Math.max(slope[i] as number, steepest);
    slope[i + 1] = Math.max(slope[i + 1] as number, steepest);
  }
  return { x, y, slope };
}
