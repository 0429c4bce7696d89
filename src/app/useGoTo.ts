import { useEffect, useRef, useState } from 'react';
import { useActions } from '../ui/bench/DesignContext.ts';
import { fieldId } from '../ui/fields/fieldId.ts';
import { partOf } from '../ui/fields/groups.ts';

/** Opens the part that a place belongs to and puts the cursor into its field. */
export function useGoTo(): (path: string) => void {
  const { selectPart } = useActions();
  const [target, setTarget] = useState<string | null>(null);
  const wanted = useRef(target);
  useEffect(() => {
    if (target === null || wanted.current === target) return;
    wanted.current = target;
    const element = document.getElementById(fieldId(target)) ?? document.getElementById('part-heading');
    for (let up = element?.closest('details'); up; up = up.parentElement?.closest('details')) up.open = true;
    element?.focus();
    wanted.current = null;
    setTarget(null);
  }, [target]);
  return (path) => {
    const part = partOf(path);
    if (part !== null) selectPart(part);
    setTarget(path);
  };
}
