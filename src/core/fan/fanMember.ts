import { evaluatePchip, type Pchip } from '../solve/pchip.ts';
import type { Stage } from './addBehind.ts';
import { type FallingCurve, fallingCurve, fallingLoss } from './fallingCurve.ts';
import { curveDensity_kgPerM3, type FanCurve } from './fanCurve.ts';
import { standingDrop_Pa } from './standingDrop_Pa.ts';

/** Equal fans that stand together, as a member of a group. */
export interface FanMember {
  /** At rated speed and 1.2 kg/m³. */
  readonly curve: FanCurve;
  /** Speed over rated speed; 0 stands still. */
  readonly speedRatio: number;
  /** Lanes side by side, and fans behind one another in each. */
  readonly sideBySide: number;
  readonly inARow: number;
  /** `first`, then all that stand `beside` it at one pressure, then all that stand `behind` them at one flow. */
  readonly place: 'first' | 'beside' | 'behind';
  /** What one of them takes while it stands still: velocity heads on an area. */
  readonly standing: { readonly loss: number; readonly area_m2: number };
}

/** A fan that stands still takes at least this many velocity heads, so that it is never no resistance at all. */
const leastStandingLoss = 0.01;

/** Air runs back through a slow fan no easier than through the same one at this share of its rated speed. */
const leastBackSpeed = 0.3;

/** A curve with other flows and pressures: its slopes scale with it, so that nothing is interpolated anew. */
export function scaledCurve(curve: Pchip, flow: number, pressure: number): Pchip {
  if (flow === 1 && pressure === 1) return curve;
  const slope = pressure / flow;
  return { x: times(curve.x, flow), y: times(curve.y, pressure), slope: times(curve.slope, slope) };
}

function times(values: Float64Array, factor: number): Float64Array {
  const scaled = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) scaled[i] = (values[i] as number) * factor;
  return scaled;
}

/** Highest pressure of all of a member; nil where it stands still. */
export function top_Pa(member: FanMember): number {
  return Math.max(0, ...lanesCurve(member).y);
}

/** Flow of all of a member against no pressure. */
export function freeDelivery_m3PerS({ curve, speedRatio, sideBySide }: FanMember): number {
  return curve.freeFlow_m3PerS * speedRatio * sideBySide;
}

/** All of a member over the flow through it, for adding pressures. */
export function memberStage(member: FanMember): Stage {
  if (member.speedRatio > 0) return curveStage(lanesCurve(member));
  const perSquare = standingPerSquare(member);
  return {
    knots: [],
    evaluate: (flow, out) => {
      out[0] = -perSquare * flow * Math.abs(flow);
      out[1] = -2 * perSquare * Math.abs(flow);
    },
  };
}

export function curveStage(curve: Pchip): Stage {
  return { knots: curve.x, evaluate: (flow, out) => evaluatePchip(curve, flow, out) };
}

/** All of a member as the flow at each pressure, for adding flows. */
export function memberFalling(member: FanMember, window_Pa: number): FallingCurve {
  const { speedRatio, sideBySide, inARow } = member;
  if (!(speedRatio > 0)) return fallingLoss(standingPerSquare(member), window_Pa);
  const { x, y, slope } = fromRest(member.curve.curve);
  const last = x.length - 1;
  const mean = (y[0] as number) / (x[last] as number);
  const back = Math.max(mean, -(slope[0] as number)) * Math.max(speedRatio, leastBackSpeed);
  const ahead = Math.max(1e-3 * mean, -(slope[last] as number)) * speedRatio;
  const perLane = -inARow / sideBySide;
  return fallingCurve(lanesCurve(member), { left: back * perLane, right: ahead * perLane, window_Pa });
}

function lanesCurve({ curve, speedRatio: n, sideBySide, inARow }: FanMember): Pchip {
  return scaledCurve(fromRest(curve.curve), n * sideBySide, n * n * inARow);
}

/** A curve that begins at some flow, taken back to none: straight on where it falls there, level where it rises. */
function fromRest(curve: Pchip): Pchip {
  const [first = 0] = curve.x;
  if (first <= 0) return curve;
  const slope = Math.min(0, curve.slope[0] as number);
  return {
    x: Float64Array.of(0, ...curve.x),
    y: Float64Array.of((curve.y[0] as number) - slope * first, ...curve.y),
    slope: Float64Array.of(slope, slope, ...curve.slope.subarray(1)),
  };
}

/** Pressure over the square of the flow through all of a member at a stand, at 1.2 kg/m³. */
function standingPerSquare({ sideBySide, inARow, standing }: FanMember): number {
  const loss = Math.max(standing.loss, leastStandingLoss) * inARow;
  return standingDrop_Pa(loss, 1 / (standing.area_m2 * sideBySide), curveDensity_kgPerM3);
}
