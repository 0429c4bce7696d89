import { listed, small } from '../words.ts';
import type { CheckGroup } from './checkRecord.ts';
import { kindWords } from './kinds.ts';
import { isOfMethods } from './subjects.ts';
import { type Check, flatten, kindTotals, totalsOf } from './totals.ts';

/** A count with a comma at thousands. */
export const count = (value: number): string => value.toLocaleString('en-GB');

/** A part of all in whole per cent, rounded down: hardly all of them are not all of them. */
export function shareOf(part: number, all: number): string {
  return part === all ? 'all' : `${Math.floor((100 * part) / all)}\u202f%`;
}

/** What the checks come to, in a few sentences: on the page, and in the readme. */
export function trustSentences(groups: readonly CheckGroup[]): string[] {
  const checks = flatten(groups);
  const ofMethods = checks.filter(({ subject }) => isOfMethods(subject));
  const kept = checks.length - ofMethods.length;
  const { within1, within5, worst, sources } = totalsOf(ofMethods);
  const all = ofMethods.length;
  const counts = kindTotals(ofMethods).flatMap(({ kind, count: n }) =>
    n > 0 || kind === 'measured' ? [`${n === 0 ? 'none' : count(n)} ${kindWords[kind].counted}`] : [],
  );
  return [
    `The tests hold ${count(all)} numbers that the methods give against published ones of ${count(sources)} sources: ${listed(counts)}.`,
    `${shareOf(within1, all)} agree within 1\u202f%, ${shareOf(within5, all)} within 5\u202f%, and each within what its method is allowed.${
      worst === null ? '' : ` ${farthest(worst)}`
    }`,
    ...(kept > 0
      ? [
          `Another ${count(kept)} hold the materials and sizes of the shelf and the factors of units against tables.`,
        ]
      : []),
  ];
}

function farthest({ test, quantity, printed, computed, deviation }: Check): string {
  const off = `${Math.round(Math.abs(deviation) * 100)}\u202f%`;
  return `Farthest off, by ${off}, is the ${small(quantity)} of “${test}”: ${computed} for ${printed}.`;
}
