import { patternOf } from '../../../model/path.ts';
import { fieldPath } from '../fieldId.ts';
import { focusInside } from '../focusInside.ts';

/**
 * Puts the cursor into the field of a measure. Of a list, the row that had it last is meant, else one that lies open,
 * else the first.
 */
export function focusField(panel: Element, pattern: string, last: string | null): void {
  const own = [...panel.querySelectorAll<HTMLElement>('input, select')].filter(
    ({ id }) => patternOf(fieldPath(id) ?? '') === pattern,
  );
  const row = last === null ? null : rowOf(last);
  const control =
    own.find(({ id }) => row !== null && rowOf(fieldPath(id) ?? '') === row) ??
    own.find((each) => each.closest('details')?.open !== false) ??
    own[0];
  if (control) focusInside(control);
}

/** `parts[1]` of `parts[1].length_m`; `null` where there are no rows. */
function rowOf(path: string): string | null {
  const end = path.indexOf(']');
  return end < 0 ? null : path.slice(0, end + 1);
}
