import type { Design } from '../model/design.ts';
import type { DesignState } from './state.ts';

/** Whether two designs are the same box: what was read on a prototype is no part of it. Groups never change in place. */
export function isSameBox(one: Design, other: Design): boolean {
  if (one === other) return true;
  return (Object.keys(one) as (keyof Design)[]).every((key) => key === 'readings' || one[key] === other[key]);
}

/** Whether a design is the present one, or became it or was it by an edit that is remembered: another one opened is not. */
export function isOfThisBox({ solvedDesign, history }: DesignState, design: Design): boolean {
  return (
    isSameBox(design, solvedDesign) ||
    [...history.past, ...history.future].some(({ moment }) => isSameBox(moment.solvedDesign, design))
  );
}
