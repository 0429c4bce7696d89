import type { Axis, AxisId, Mark, Place, Tracing } from '../../model/tracing/tracing.ts';
import type { Target } from './target.ts';

export function withAxis({ axes, points }: Tracing, id: AxisId, change: Partial<Axis>): Tracing {
  return { axes: { ...axes, [id]: { ...axes[id], ...change } }, points };
}

export function withMark(tracing: Tracing, id: AxisId, index: 0 | 1, mark: Mark): Tracing {
  const [first, second] = tracing.axes[id].marks;
  return withAxis(tracing, id, { marks: index === 0 ? [mark, second] : [first, mark] });
}

/** A mark keeps its value wherever it goes. */
export function movedTo(tracing: Tracing, target: Target, at: Place): Tracing {
  if (target.kind === 'point') return { ...tracing, points: tracing.points.with(target.index, at) };
  const mark = tracing.axes[target.axis].marks[target.index];
  return withMark(tracing, target.axis, target.index, { ...mark, at });
}

/** A point goes with its row; of a mark only the place goes, for its value is as printed. */
export function withoutTarget(tracing: Tracing, target: Target): Tracing {
  if (target.kind === 'point') return { ...tracing, points: tracing.points.toSpliced(target.index, 1) };
  const mark = tracing.axes[target.axis].marks[target.index];
  return withMark(tracing, target.axis, target.index, { ...mark, at: null });
}
