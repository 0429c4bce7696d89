import { type Dimension, dimensions, unitOf } from './dimensions.ts';
import type { Amount } from './readCompound.ts';
import type { NumberProblem } from './readNumber.ts';
import { findSpelling } from './spellings.ts';

/**
 * The letter of the multiplier in place of the decimal mark, as IEC 60062 marks resistors: 4k7, 4R7, R47; the trade
 * writes 3V3 likewise. `null` where the text is something else.
 */
export function readInfix(body: string, dimension: Dimension): Amount | NumberProblem | null {
  const { infix } = dimensions[dimension];
  const [, whole = '', letter = '', part = '', written = ''] = /^(\d*)([a-z])(\d+) ?(\D*)$/i.exec(body) ?? [];
  if (infix === undefined || letter === '') return null;
  if (letter === 'E' && whole !== '' && Object.hasOwn(infix, 'R')) {
    // Some write 4E7 for 4.7 Ω; as a power of ten it is 40 MΩ.
    return { reason: 'ambiguous', readings: [`${whole}.${part}`, `${whole}e${part}`] };
  }
  const key = Object.hasOwn(infix, letter) ? infix[letter] : undefined;
  if (key === undefined) return null;
  if (written !== '' && findSpelling(dimension, written)?.factor !== 1) return null;
  const amount = Number(`${whole === '' ? '0' : whole}.${part}`);
  return Number.isFinite(amount) ? { amount, unit: unitOf(dimension, key) } : { reason: 'tooLarge' };
}
