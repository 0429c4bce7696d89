import type { Pchip } from '../solve/pchip.ts';

/** Cubic between two points, with the slopes there; pressure does not rise along it. */
export interface FallingPiece {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  readonly m0: number;
  readonly m1: number;
}

/** Pieces from left to right, each beginning where the one before ends: for every pressure there is a flow. */
export type FallingCurve = readonly FallingPiece[];

/** How a curve goes on beyond its points: both slopes below zero, as far as `window_Pa` above and below nothing. */
export interface Beyond {
  readonly left: number;
  readonly right: number;
  readonly window_Pa: number;
}

/**
 * The most flow at each pressure of a curve that ends at no pressure: the curve itself where it only falls, and a level
 * stretch over each dip from its far side back to where the curve is as high again.
 */
export function fallingCurve(curve: Pchip, { left, right, window_Pa }: Beyond): FallingCurve {
  const { x, y, slope } = curve;
  const last = x.length - 1;
  const end_m3PerS = x[last] as number;
  const pieces: FallingPiece[] = [
    {
      x0: end_m3PerS,
      x1: end_m3PerS - (window_Pa + (y[last] as number)) / right,
      y0: y[last] as number,
      y1: -window_Pa,
      m0: right,
      m1: right,
    },
  ];
  let from = end_m3PerS;
  let level = y[last] as number;
  for (let i = last; i > 0; i--) {
    const y0 = y[i - 1] as number;
    const whole: FallingPiece = {
      x0: x[i - 1] as number,
      x1: x[i] as number,
      y0,
      y1: y[i] as number,
      m0: slope[i - 1] as number,
      m1: slope[i] as number,
    };
    if (from === whole.x1 && y0 >= level) pieces.push(whole);
    else if (y0 > level) {
      const cut = pointAt(whole, level);
      pieces.push(levelPiece(cut.flow, from, level), { ...whole, x1: cut.flow, y1: level, m1: cut.slope });
    } else continue;
    from = whole.x0;
    level = y0;
  }
  const first = x[0] as number;
  if (from > first) {
    const back = first + (level - (y[0] as number)) / left;
    pieces.push(levelPiece(back, from, level));
    from = back;
  }
  pieces.push({
    x0: from + (window_Pa - level) / left,
    x1: from,
    y0: window_Pa,
    y1: level,
    m0: left,
    m1: left,
  });
  return pieces.reverse();
}

/** What takes `perSquare` times the square of the flow, either way: a hole beside fans that blow. */
export function fallingLoss(perSquare: number, window_Pa: number): FallingCurve {
  const most = Math.sqrt(window_Pa / perSquare);
  const steep = -2 * perSquare * most;
  return [
    { x0: -most, x1: 0, y0: window_Pa, y1: 0, m0: steep, m1: 0 },
    { x0: 0, x1: most, y0: 0, y1: -window_Pa, m0: 0, m1: steep },
  ];
}

function levelPiece(x0: number, x1: number, level: number): FallingPiece {
  return { x0, x1, y0: level, y1: level, m0: 0, m1: 0 };
}

/** Flows at one pressure, least and most (different on a level stretch), and the slopes just above and just below it. */
export interface Crossing {
  least: number;
  most: number;
  above: number;
  below: number;
}

export function crossingAt(curve: FallingCurve, dp_Pa: number): Crossing {
  const end = curve.length - 1;
  let left = 0;
  while (left < end && (curve[left + 1] as FallingPiece).y0 > dp_Pa) left++;
  let right = left;
  while (right < end && (curve[right] as FallingPiece).y1 >= dp_Pa) right++;
  const least = pointAt(curve[left] as FallingPiece, dp_Pa);
  const most = right === left ? least : pointAt(curve[right] as FallingPiece, dp_Pa);
  return { least: least.flow, most: most.flow, above: least.slope, below: most.slope };
}

/** Pressure on a piece, a share of the way along it. */
export function pressureOnPiece({ x0, x1, y0, y1, m0, m1 }: FallingPiece, share: number): number {
  const h = x1 - x0;
  const a = (m0 + m1) * h - 2 * (y1 - y0);
  const b = 3 * (y1 - y0) - (2 * m0 + m1) * h;
  return y0 + share * (m0 * h + share * (b + share * a));
}

/** Where a piece, going straight on beyond its ends, has a pressure: Newton's steps, halved where they leave the bracket. */
function pointAt({ x0, x1, y0, y1, m0, m1 }: FallingPiece, dp_Pa: number): { flow: number; slope: number } {
  if (dp_Pa >= y0) return { flow: dp_Pa === y0 ? x0 : x0 + (dp_Pa - y0) / m0, slope: m0 };
  if (dp_Pa <= y1) return { flow: dp_Pa === y1 ? x1 : x1 + (dp_Pa - y1) / m1, slope: m1 };
  const h = x1 - x0;
  const start = m0 * h;
  const a = start + m1 * h - 2 * (y1 - y0);
  const b = 3 * (y1 - y0) - 2 * start - m1 * h;
  let low = 0;
  let high = 1;
  let t = (dp_Pa - y0) / (y1 - y0);
  for (let i = 0; i < 60; i++) {
    const off = y0 + t * (start + t * (b + t * a)) - dp_Pa;
    if (off > 0) low = t;
    else high = t;
    const next = t - off / (start + t * (2 * b + 3 * t * a));
    const inside = next > low && next < high ? next : 0.5 * (low + high);
    if (Math.abs(inside - t) <= 1e-15) break;
    t = inside;
  }
  return { flow: x0 + t * h, slope: Math.min(0, (start + t * (2 * b + 3 * t * a)) / h) };
}
