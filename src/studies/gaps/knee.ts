export interface CurvePoint {
  readonly x: number;
  readonly y: number;
}

export interface Knee extends CurvePoint {
  /** Left of it the curve changes fast, right of it slowly; or the other way round. */
  readonly kind: 'levelsOff' | 'takesOff';
  /** From the chord, with both spans taken as one: 0 for a straight line, towards 1 for a sharp corner. */
  readonly distance: number;
}

/**
 * The knee of a curve that only rises or only falls: the point farthest from the chord once both axes are scaled to one,
 * the rule of Satopää, Albrecht, Irwin & Raghavan 2011, "Finding a «Kneedle» in a Haystack", ICDCSW, 166–171 (offline,
 * sensitivity 1). Of an exact curve every bend has such a point, so one is told only where the distance is worth it.
 * @param points by rising x
 * @param leastDistance a choice of ours, not of the source
 * @returns `null` for fewer than three points, a level curve, or one that is nearly straight
 */
export function kneeOf(points: readonly CurvePoint[], leastDistance = 0.15): Knee | null {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last || points.length < 3) return null;
  const wide = last.x - first.x;
  const high = last.y - first.y;
  if (!(wide > 0) || high === 0) return null;
  let most = 0;
  let at = first;
  for (const point of points) {
    const above = (point.y - first.y) / high - (point.x - first.x) / wide;
    if (Math.abs(above) > Math.abs(most)) {
      most = above;
      at = point;
    }
  }
  // The curve returns to its chord at the end, so the threshold of the source asks for more than one mean step.
  const step = 1 / (points.length - 1);
  if (Math.abs(most) < Math.max(leastDistance, step)) return null;
  return { ...at, kind: most > 0 ? 'levelsOff' : 'takesOff', distance: Math.abs(most) };
}

/** Part of a curve to one side of its lowest point. */
export interface Branch {
  readonly points: readonly CurvePoint[];
  /** From one end to the other, never negative. */
  readonly change: number;
}

/** The side of the lowest point on which the curve climbs most: what a knee is looked for in. */
export function steeperBranch(points: readonly CurvePoint[]): Branch {
  const lowest = points.reduce((at, { y }, i) => (y < (points[at]?.y ?? y) ? i : at), 0);
  const left = branchOf(points.slice(0, lowest + 1));
  const right = branchOf(points.slice(lowest));
  return left.change > right.change ? left : right;
}

function branchOf(points: readonly CurvePoint[]): Branch {
  return { points, change: Math.abs((points.at(-1)?.y ?? 0) - (points[0]?.y ?? 0)) };
}
