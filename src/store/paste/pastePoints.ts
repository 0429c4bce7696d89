import type { Design } from '../../model/design.ts';
import { setAt } from '../../model/path.ts';
import { without } from '../drafts.ts';
import { typed } from '../edits.ts';
import { type Point, rowsAt } from '../rows.ts';
import type { Entered } from '../state.ts';

/** All points of a curve at once; a cell that does not read keeps its text and is told. @returns why not, in a string */
export function pastePoints(
  state: Entered,
  list: string,
  rows: readonly (readonly [string, string])[],
): Partial<Entered> | string {
  if (rows.length < 2) return 'A curve needs at least two rows.';
  if (rows.length > 100) return `That is ${rows.length} rows; at most 100 fit.`;
  const old = rowsAt<Point>(state, list);
  const points = rows.map((_, index) => old[index] ?? { flow_m3PerS: 0, dp_Pa: 0 });
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
  return next;
}
