import { rowLimits } from '../model/fields.ts';
import { getAt, type Path, setAt } from '../model/path.ts';
import { closeRow, openRow } from './drafts.ts';
import type { DesignState } from './state.ts';

type Edited = Pick<DesignState, 'design' | 'drafts' | 'units'>;
export type Point = DesignState['design']['fan']['curve'][number];

export function rowsAt<T>(state: Edited, list: Path): readonly T[] {
  const rows = getAt(state.design, list);
  if (!Array.isArray(rows)) throw new Error(`no list ${list}`);
  return rows;
}

/** A new row at `index`; drafts and units of the rows after it move along. @returns why not, if the list is full */
export function insertRow(state: Edited, list: Path, index: number, row: unknown): Edited | string {
  const rows = rowsAt(state, list);
  const { most } = rowLimits(list);
  if (rows.length >= most) return `This list has room for ${most} rows, and all are taken.`;
  return {
    design: setAt(state.design, list, rows.toSpliced(index, 0, row)),
    drafts: openRow(state.drafts, list, index),
    units: openRow(state.units, list, index),
  };
}

/** Takes a row away with everything typed in it. @returns why not, if the list would be too short */
export function removeRow(state: Edited, list: Path, index: number): Edited | string {
  const rows = rowsAt(state, list);
  const { least } = rowLimits(list);
  if (rows.length <= least) return least === 1 ? 'One row has to stay.' : `${least} rows have to stay.`;
  return {
    design: setAt(state.design, list, rows.toSpliced(index, 1)),
    drafts: closeRow(state.drafts, list, index),
    units: closeRow(state.units, list, index),
  };
}

/** A point halfway between two neighbours fits any curve; the first of an empty list brings a second with it. */
export function insertPoint(state: Edited, list: Path, after: number): Edited | string {
  const points = rowsAt<Point>(state, list);
  if (points.length === 0) {
    const first = insertRow(state, list, 0, { flow_m3PerS: 0.005, dp_Pa: 5 });
    return typeof first === 'string' ? first : insertRow(first, list, 1, { flow_m3PerS: 0.01, dp_Pa: 20 });
  }
  const left = Math.max(0, Math.min(after, points.length - 2));
  const a = points[left] as Point;
  const b = points[left + 1] ?? { flow_m3PerS: a.flow_m3PerS * 2, dp_Pa: a.dp_Pa * 4 };
  return insertRow(state, list, left + 1, {
    flow_m3PerS: (a.flow_m3PerS + b.flow_m3PerS) / 2,
    dp_Pa: (a.dp_Pa + b.dp_Pa) / 2,
  });
}
