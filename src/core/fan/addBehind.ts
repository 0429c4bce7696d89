import { evaluatePchip, type Pchip } from '../solve/pchip.ts';

/** Pressure over the flow through all of it, and its derivative, to `out[0]` and `out[1]`; falling beyond its points. */
export interface Stage {
  readonly evaluate: (flow_m3PerS: number, out: Float64Array) => void;
  /** Flows between which it is a cubic. */
  readonly knots: ArrayLike<number>;
}

type Sloped = readonly [flow: number, dp_Pa: number, slope: number];

/**
 * Fans behind one another as one curve up to `most_m3PerS`: at every flow their pressures add. A sum of cubics is a cubic
 * between the union of their points, so nothing is lost; the places where the sum turns are made points of it, so that it is
 * monotone between points as every fan's curve is.
 */
export function addBehind(stages: readonly Stage[], most_m3PerS: number): Pchip {
  const flows = new Set([0, most_m3PerS]);
  for (const { knots } of stages)
    for (let i = 0; i < knots.length; i++) {
      const flow = knots[i] as number;
      if (flow > 0 && flow < most_m3PerS * (1 - 1e-9)) flows.add(flow);
    }
  const pair = new Float64Array(2);
  const points: Sloped[] = [];
  for (const flow of Array.from(flows).sort((a, b) => a - b)) {
    const before = points[points.length - 1];
    if (before && flow - before[0] < 1e-9 * most_m3PerS) continue;
    let dp_Pa = 0;
    let slope = 0;
    for (const { evaluate } of stages) {
      evaluate(flow, pair);
      dp_Pa += pair[0] as number;
      slope += pair[1] as number;
    }
    const next: Sloped = [flow, dp_Pa, slope];
    if (before) points.push(...turningPoints(before, next));
    points.push(next);
  }
  return pchipOf(points);
}

/** Where the cubic between two points is level and turns. */
function turningPoints([x0, y0, m0]: Sloped, [x1, y1, m1]: Sloped): Sloped[] {
  const h = x1 - x0;
  const a = (m0 + m1) * h - 2 * (y1 - y0);
  const b = 3 * (y1 - y0) - (2 * m0 + m1) * h;
  const root = b * b - 3 * a * m0 * h;
  if (!(root > 0)) return [];
  // Of the two ways to write the roots of a quadratic the one that loses no digits.
  const q = -(b + Math.sign(b || 1) * Math.sqrt(root));
  return [q / (3 * a), (m0 * h) / q]
    .filter((t) => t > 1e-6 && t < 1 - 1e-6)
    .sort((s, t) => s - t)
    .map((t): Sloped => [x0 + t * h, y0 + t * (m0 * h + t * (b + t * a)), 0]);
}

/** As a curve from no flow to the last flow that still has pressure. */
export function fromRestToFree(curve: Pchip): Pchip {
  const { x, y, slope } = curve;
  const pair = new Float64Array(2);
  evaluatePchip(curve, 0, pair);
  const points: Sloped[] = [[0, pair[0] as number, pair[1] as number]];
  let end = x.length - 1;
  while (end > 0 && !((y[end - 1] as number) > 0)) end--;
  const free = zeroBetween(curve, Math.max(0, x[end - 1] as number), x[end] as number);
  for (let i = 0; i < end; i++) {
    const flow = x[i] as number;
    if (flow > 1e-9 * free && flow < (1 - 1e-9) * free)
      points.push([flow, y[i] as number, slope[i] as number]);
  }
  evaluatePchip(curve, free, pair);
  points.push([free, 0, pair[1] as number]);
  return pchipOf(points);
}

function zeroBetween(curve: Pchip, low: number, high: number): number {
  const pair = new Float64Array(2);
  for (let i = 0; i < 80; i++) {
    const middle = 0.5 * (low + high);
    evaluatePchip(curve, middle, pair);
    if (pair[0] === 0) return middle;
    if ((pair[0] as number) > 0) low = middle;
    else high = middle;
  }
  return high;
}

/** A rise within rounding is none. */
function pchipOf(points: readonly Sloped[]): Pchip {
  const x = Float64Array.from(points, ([flow]) => flow);
  const y = Float64Array.from(points, ([, dp_Pa]) => dp_Pa);
  const hair = 1e-12 * Math.abs(y[0] as number);
  for (let i = 1; i < y.length; i++) {
    const rise = (y[i] as number) - (y[i - 1] as number);
    if (rise > 0 && rise < hair) y[i] = y[i - 1] as number;
  }
  return { x, y, slope: Float64Array.from(points, ([, , slope]) => slope) };
}
