import type { Design } from '../../model/design.ts';
import { rowLimits } from '../../model/fields.ts';
import { setAt } from '../../model/path.ts';
import { without } from '../drafts.ts';
import { typed } from '../edits.ts';
import { type Point, rowsAt } from '../rows.ts';
import type { Entered } from '../state.ts';

/**
 * All points of a curve at once, in the order in which they come; a cell that does not read keeps its text and is told.
 * @returns why not, in a string
 */
export function pastePoints(
  state: Entered,
  list: string,
  rows: readonly (readonly [string, string])[],
): Partial<Entered> | string {
  const misfit = countMisfit(list, rows.length);
  if (misfit !== null) return misfit;
  const points = rows.map((): Point => ({ flow_m3PerS: 0, dp_Pa: 0 }));
  let next: Entered = {
    ...state,
    design: setAt<Design>(state.design, list, points),
    drafts: without(state.drafts, list),
    units: without(state.units, list),
  };
  rows.forEach(([flow, pressure], index) => {
    next = { ...next, ...typed(next, `${list}[${index}].flow_m3PerS`, flow) };
    next = { ...next, ...typed(next, `${list}[${index}].dp_Pa`, pressure) };
  });
  return { ...next, design: setAt<Design>(next.design, list, withStandIns(next, list)) };
}

/** Why a curve cannot have so many points; `null` where it can. */
export function countMisfit(list: string, count: number): string | null {
  const { least, most } = rowLimits(list);
  if (count < least) return 'A curve needs at least two rows.';
  return count > most ? `That is ${count} rows; at most ${most} fit.` : null;
}

/** Under a text that does not read stands its neighbour's value, so that nothing is told of a row that is right. */
function withStandIns(state: Entered, list: string): Point[] {
  const points = rowsAt<Point>(state, list).map((point) => ({ ...point }));
  for (const key of ['flow_m3PerS', 'dp_Pa'] as const) {
    const reads = points.map((_, index) => state.drafts[`${list}[${index}].${key}`]?.problem === null);
    let last = key === 'flow_m3PerS' ? 0 : (points[reads.indexOf(true)]?.[key] ?? 0);
    points.forEach((point, index) => {
      if (reads[index]) last = point[key];
      else point[key] = last;
    });
  }
  return points;
}
