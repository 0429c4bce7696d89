import type { Design } from './design.ts';
import { type Problem, problem } from './problem.ts';

type Points = readonly Readonly<Design['fan']['curve'][number]>[];

/** Points closer than this cannot be told apart on any test rig, and a curve through them has no slope worth the name. */
const smallestStep_m3PerS = 1e-7;

/** Hub, frame and curve of every fan. */
export function checkFans({ fan, moreFans }: Design): Problem[] {
  const frame =
    fan.opening_m > fan.size_m * (1 + 1e-9)
      ? [problem('fan.opening_m', 'openingTooLarge', { size_m: fan.size_m })]
      : [];
  return [
    ...frame,
    ...checkFan('fan', fan),
    ...moreFans.flatMap((other, index) => checkFan(`moreFans[${index}]`, other)),
  ];
}

function checkFan(
  path: string,
  { hub_m, opening_m, curve }: Design['moreFans'][number] | Design['fan'],
): Problem[] {
  return [
    ...(hub_m >= opening_m ? [problem(`${path}.hub_m`, 'hubTooLarge', { opening_m })] : []),
    ...checkFanCurve(`${path}.curve`, curve),
  ];
}

/** Points of extra losses. */
export function checkExtras({ extras }: Design): Problem[] {
  return extras.flatMap(({ points }, index) => checkLossPoints(`extras[${index}].points`, points));
}

/** Points of one fan curve at this place of a design. */
export function checkFanCurve(path: string, points: Points): Problem[] {
  return [...checkOrder(path, points), ...checkFanPressures(path, points)];
}

/** Points of one extra loss at this place of a design. */
export function checkLossPoints(path: string, points: Points): Problem[] {
  const [first, second] = points;
  if (first === undefined) return [];
  if (second === undefined && first.flow_m3PerS === 0)
    return [problem(`${path}[0].flow_m3PerS`, 'onePoint', {})];
  return [...checkOrder(path, points), ...checkLossPressures(path, points)];
}

function checkOrder(path: string, points: Points): Problem[] {
  return points.flatMap((point, index) => {
    const before = points[index - 1];
    if (before === undefined) return [];
    const step = point.flow_m3PerS - before.flow_m3PerS;
    if (step >= smallestStep_m3PerS) return [];
    const data = { before_m3PerS: before.flow_m3PerS };
    return [
      problem(
        `${path}[${index}].flow_m3PerS`,
        Math.abs(step) < smallestStep_m3PerS ? 'flowTwice' : 'flowNotRising',
        data,
      ),
    ];
  });
}

/** A dip on the way is a fan's right; but a curve must begin with pressure and end lower than anywhere before. */
function checkFanPressures(path: string, points: Points): Problem[] {
  const first = points[0];
  const last = points.length - 1;
  const end = points[last];
  if (first === undefined || end === undefined) return [];
  if (first.dp_Pa <= 0) return [problem(`${path}[0].dp_Pa`, 'shutOffWithoutPressure', {})];
  const below_Pa = points
    .slice(0, last)
    .reduce((least, point) => Math.min(least, point.dp_Pa), Number.POSITIVE_INFINITY);
  return end.dp_Pa < below_Pa
    ? []
    : [problem(`${path}[${last}].dp_Pa`, 'endPressureNotLowest', { below_Pa })];
}

function checkLossPressures(path: string, points: Points): Problem[] {
  const start = points[0];
  const atRest = start !== undefined && start.flow_m3PerS === 0 && start.dp_Pa !== 0;
  if (atRest) return [problem(`${path}[0].dp_Pa`, 'lossAtRest', {})];
  return points.flatMap((point, index) => {
    const before_Pa = points[index - 1]?.dp_Pa ?? 0;
    const rises = point.dp_Pa > before_Pa || (index === 0 && point.flow_m3PerS === 0);
    return rises ? [] : [problem(`${path}[${index}].dp_Pa`, 'lossNotRising', { before_Pa })];
  });
}
