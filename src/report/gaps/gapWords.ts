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

/** The shortest that still tells gaps apart, for the axes of charts. */
export function gapSize(at_m: number, system: UnitSystem): string {
  return quantity(at_m, 'length', system, 3);
}

/** What a maker sets on a rule: hundredths of a millimetre, thousandths of an inch. */
const leastSaid_m: Readonly<Record<UnitSystem, number>> = { metric: 1e-5, inch: 2.54e-5 };

/** A bound, rounded so that what is said is never beyond it. @param digits significant, where fewer do */
export function boundSize(
  at_m: number,
  round: 'down' | 'up',
  system: UnitSystem,
  digits = Number.POSITIVE_INFINITY,
): string {
  const least_m = leastSaid_m[system];
  const decade_m = 10 ** (Math.floor(Math.log10(Math.max(at_m, least_m) / least_m)) + 1 - digits) * least_m;
  const step_m = Math.max(least_m, decade_m);
  const steps = at_m / step_m;
  const whole = round === 'down' ? Math.floor(steps + 1e-6) : Math.ceil(steps - 1e-6);
  return quantity(Math.max(0, whole) * step_m, 'length', system, 4);
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
