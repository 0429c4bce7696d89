import { useCallback, useEffect, useRef } from 'react';
import type { Path } from '../model/path.ts';
import { useActions } from '../ui/bench/DesignContext.ts';
import { fieldId } from '../ui/fields/fieldId.ts';
import { focusInside } from '../ui/fields/focusInside.ts';
import { partOf } from '../ui/fields/groups.ts';

/** A table that is still loading gets so many frames to appear. */
const mostFrames = 60;

/** Opens the part that a place belongs to and puts the cursor into its field. */
export function useGoTo(): (path: Path) => void {
  const { selectPart } = useActions();
  const frame = useRef(0);
  useEffect(() => () => cancelAnimationFrame(frame.current), []);
  return useCallback(
    (path) => {
      const part = partOf(path);
      if (part !== null) selectPart(part);
      cancelAnimationFrame(frame.current);
      const look = (left: number) => {
        const field = document.getElementById(fieldId(path));
        if (field !== null) focusInside(field);
        else if (left > 0) frame.current = requestAnimationFrame(() => look(left - 1));
        else document.getElementById('part-heading')?.focus();
      };
      frame.current = requestAnimationFrame(() => look(mostFrames));
    },
    [selectPart],
  );
}
