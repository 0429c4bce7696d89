import { listed, percent } from '../words.ts';
import type { CheckGroup } from './checkRecord.ts';
import { kindWords } from './kinds.ts';
import { type Check, flatten, kindTotals, totalsOf } from './totals.ts';

/** A count with a comma at thousands. */
export const count = (value: number) => value.toLocaleString('en-GB');

/** How far one is off, to a whole per cent: nobody trusts the tenths of a worst case. */
const wholePercent = ({ deviation }: Check) => `${Math.round(Math.abs(deviation) * 100)} %`;

/** A share of checks to a whole per cent, never rounded up to all of them. */
export function shareOf(part: number, all: number): string {
  if (part === all) return 'all of them';
  return percent(Math.min(Math.floor((100 * part) / all), 99) / 100).replace('.0', '');
}

/** What the checks come to, in three sentences: on the page, and in the readme. */
export function trustSentences(groups: readonly CheckGroup[]): string[] {
  const checks = flatten(groups);
  const all = totalsOf(checks);
  const kinds = kindTotals(checks).filter((each) => each.count > 0);
  const counts = kinds.map(({ kind, count: n }) => `${count(n)} ${kindWords[kind].counted}`);
  return [
    `The tests hold ${count(all.count)} numbers of the program against published ones of ${count(all.sources)} sources: ${listed(counts)}.`,
    `${shareOf(all.within1, all.count)} agree within 1 %, ${shareOf(all.within5, all.count)} within 5 %${
      all.worst === null ? '' : `; the farthest is ${wholePercent(all.worst)} off, which is what its method owns up to`
    }.`,
  ];
}
