import { type Dimension, dimensions, type Unit } from './dimensions.ts';
import { readNumber } from './readNumber.ts';
import { findSpelling } from './spellings.ts';
import { fromSI, toSI } from './unit.ts';

/** A number and the unit it is in. */
export interface Amount {
  readonly amount: number;
  readonly unit: Unit;
}

/** A unit word or mark, then perhaps the hyphen that the trade writes in 2'-3". */
const unitThenMore = /^ ?(["']|[a-z]+\.?)(?: ?- ?| )?(.*)$/i;

/**
 * Units of falling size one after the other: 2 ft 3 in, 2' 3 1/2", 1 h 30 min.
 * @param first the number already read, with `written` after it
 * @returns the sum in the last unit; `null` where the text is something else
 */
export function readCompound(first: number, written: string, dimension: Dimension): Amount | null {
  const ranks = dimensions[dimension].compound ?? [];
  let total = 0;
  let number = first;
  let rest = written;
  let rank = -1;
  for (;;) {
    const [, word = '', more = ''] = unitThenMore.exec(rest) ?? [];
    const unit = findSpelling(dimension, word);
    const nextRank = unit === null ? -1 : ranks.findIndex((keys) => keys.includes(unit.key));
    if (unit === null || nextRank <= rank) return null;
    rank = nextRank;
    total += toSI(number, unit);
    if (more === '') return { amount: fromSI(total, unit), unit };
    const next = readNumber(more);
    if (!next.ok) return null;
    number = next.value;
    rest = next.rest;
  }
}
