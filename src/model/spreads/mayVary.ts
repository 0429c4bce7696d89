import { findField } from '../fields.ts';

/** What is a wish, a deviation itself or a matter of cutting does not vary from box to box. */
const fixed = /^(limits|cutting|spreads|readings|fitted)\b|olerance$|^load\.(duty|period_s)$/;

/** @param pattern a place with rows left out: `parts[].ceramic_WPerMK` */
export function mayVary(pattern: string): boolean {
  return !/\[\d/.test(pattern) && !fixed.test(pattern) && findField(pattern)?.kind === 'quantity';
}
