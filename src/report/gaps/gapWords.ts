import type { GapKey } from '../../studies/gaps/gap.ts';
import type { GapState } from '../../studies/gaps/verdictChanges.ts';
import { quantity } from '../format.ts';
import type { UnitSystem } from '../types.ts';
import { stateWords, verdictWords } from '../wording.ts';

/** A gap of the baffle inside a sentence. */
export const gapNames: Readonly<Record<GapKey, string>> = {
  sideClearance_m: 'side clearance',
  slotWidth_m: 'slot',
  endClearance_m: 'end clearance',
  leakGap_m: 'leak under the baffle',
  standOff_m: 'stand-off',
};

/** A gap with the digits that tell gaps apart; fewer for what is read off a curve. */
export function gapSize(at_m: number, system: UnitSystem, digits = 3): string {
  return quantity(at_m, 'length', system, digits);
}

/** What a maker sets on a rule: hundredths of a millimetre, thousandths of an inch. */
const leastSaid_m: Readonly<Record<UnitSystem, number>> = { metric: 1e-5, inch: 2.54e-5 };

/**
 * A bound, rounded so that what is said is never beyond it.
 * @param isSoft nothing happens right there, so that tenths do for small gaps and whole ones for wide ones
 */
export function boundSize(at_m: number, round: 'down' | 'up', system: UnitSystem, isSoft = false): string {
  const least_m = leastSaid_m[system];
  const coarser = !isSoft || at_m < 20 * least_m ? 1 : at_m < 1000 * least_m ? 10 : 100;
  const steps = at_m / (least_m * coarser);
  const whole = round === 'down' ? Math.floor(steps + 1e-6) : Math.ceil(steps - 1e-6);
  return quantity(Math.max(0, whole) * least_m * coarser, 'length', system, 4);
}

/** "the box holds with little to spare", "the box has no answer". */
export function boxDoes(state: GapState): string {
  return state === 'noAnswer' ? 'the box has no answer' : `the box ${verdictWords[state]}`;
}

/** A verdict in a cell. */
export function stateWord(state: GapState): string {
  return state === 'noAnswer' ? verdictWords.noAnswer : stateWords[state];
}

/** So much more or less of a gap at a time. */
export interface Step {
  readonly step_m: number;
  readonly words: string;
}

/** A tenth of a millimetre and a whole one; five thousandths of an inch and fifty. */
export function stepsOf(system: UnitSystem): readonly [fine: Step, coarse: Step] {
  const [fine_m, coarse_m] = system === 'metric' ? [1e-4, 1e-3] : [1.27e-4, 1.27e-3];
  return [
    { step_m: fine_m, words: gapSize(fine_m, system) },
    { step_m: coarse_m, words: system === 'metric' ? 'millimetre' : gapSize(coarse_m, system) },
  ];
}
