import type { Design } from '../../model/design.ts';
import { wordProblem } from '../../model/wordProblem.ts';
import type { FinFault } from '../../studies/changes/change.ts';
import type { Tried } from '../../studies/changes/tried.ts';
import type { Amounts } from '../amount.ts';
import { plain, quantity, unitOf } from '../format.ts';
import { withAmounts } from '../said.ts';
import type { UnitSystem } from '../types.ts';
import { unsolvedWords } from '../wording.ts';
import { changeDetail } from './changeDetail.ts';
import { saidKelvins } from './changeRow.ts';
import { changeWords } from './changeWords.ts';

/** A change that cannot be made as the rest stands, and why. */
export interface LeftOutRow {
  readonly key: string;
  readonly does: string;
  readonly detail: string;
  readonly why: string;
  /** What it would gain all the same, where that is known. */
  readonly gain: string;
  readonly amounts: Amounts<'gain'>;
}

/** @returns `null` for a change that can be made and has an answer */
export function leftOutRow(design: Design, tried: Tried, system: UnitSystem): LeftOutRow | null {
  const why = whyNot(tried, system);
  if (why === null) return null;
  const gain = tried.gain
    ? saidKelvins(tried.gain.limit_K, system)
    : { text: '–', value: null, unit: unitOf('temperatureDifference', system) };
  return {
    key: tried.key,
    does: changeWords[tried.key].does,
    detail: changeDetail(design, tried, system).text,
    why,
    ...withAmounts({ gain }),
  };
}

function whyNot({ after, fault }: Tried, system: UnitSystem): string | null {
  if (!after.ok && after.why === 'clash') return wordProblem(after.problem, system);
  if (fault !== undefined) return finWords(fault, system);
  if (after.ok) return null;
  return `There would be no answer: ${unsolvedWords[after.reason].says(noFacts)}.`;
}

/** A trial keeps the reason alone. */
const noFacts = { volts: () => 'too little', resistor: () => 'a resistor', count: () => 'many' };

function finWords(fault: FinFault, system: UnitSystem): string {
  const length = (value_m: number) => quantity(value_m, 'length', system, 3);
  if (fault.rule === 'depth')
    return `The slots would be ${plain(fault.ratio, 2)} times as deep as they are wide; ${fault.milled ? 'an end mill reaches' : 'a profile is drawn'} ${plain(fault.most, 2)} times deep.`;
  const now = fault.now_m < fault.cutter_m ? `less than now, ${length(fault.now_m)}, and ` : '';
  return `The slots would be ${length(fault.gap_m)} wide, ${now}less than the end mill, ${length(fault.cutter_m)}.`;
}
