import type { Settings } from '../../studies/changes/change.ts';
import type { Together } from '../../studies/changes/tried.ts';
import type { Amounts } from '../amount.ts';
import { unitOf } from '../format.ts';
import { withAmounts } from '../said.ts';
import type { UnitSystem, VerdictState } from '../types.ts';
import { verdictWords } from '../wording.ts';
import { saidKelvins, variantName } from './changeRow.ts';

/** Several of the best changes at once. */
export interface TogetherRow {
  readonly key: string;
  /** "The first two at once". */
  readonly does: string;
  /** Kelvin at the limit that counts, at the hottest film, and what they gain one by one. */
  readonly gain: string;
  readonly film: string;
  readonly sum: string;
  readonly amounts: Amounts<'gain' | 'film' | 'sum'>;
  /** "as much as one by one": whether they help or hinder each other. */
  readonly compared: string;
  readonly state: VerdictState;
  readonly word: string;
  readonly values: Settings;
  readonly edit: string;
  readonly variant: string;
}

export function togetherRow(together: Together, system: UnitSystem): TogetherRow {
  const { changes, values, after, gain, sum_K } = together;
  const name = changes.length === 2 ? 'two' : 'three';
  const state = after.ok ? after.state : 'noAnswer';
  const none = { text: '–', value: null, unit: unitOf('temperatureDifference', system) };
  return {
    key: `together${changes.length}`,
    does: `The best ${name} at once`,
    ...withAmounts({
      gain: gain ? saidKelvins(gain.limit_K, system) : none,
      film: gain ? saidKelvins(gain.film_K, system) : none,
      sum: gain ? saidKelvins(sum_K, system) : none,
    }),
    compared: gain ? comparedWords(gain.limit_K, sum_K) : '',
    state,
    word: verdictWords[state],
    values,
    edit: `The best ${name} changes at once`,
    variant: variantName(`best ${name} changes`),
  };
}

/** Within this of their sum they leave each other alone. */
const additive = 0.05;

function comparedWords(gain_K: number, sum_K: number): string {
  const ratio = gain_K / Math.max(sum_K, 1e-9);
  if (ratio < 1 - additive) return 'less than one by one: they take from each other';
  return ratio > 1 + additive
    ? 'more than one by one: they help each other'
    : 'as much as one by one: they add up';
}
