import type { Design } from '../model/design.ts';
import type { DesignState } from './state.ts';

/** Whether a design is the present one, or became it or was it by an edit that is remembered: another one opened is not. */
export function isOfThisBox({ solvedDesign, history }: DesignState, design: Design): boolean {
  return (
    design === solvedDesign ||
    [...history.past, ...history.future].some(({ moment }) => moment.solvedDesign === design)
  );
}
