import { readNumber as readTypedNumber } from '../units/readNumber.ts';
import { tidyText } from '../units/tidyText.ts';

export type DecimalMark = '.' | ',';

const sign = '[+\\-−]?';
const groups = "\\d{1,3}(?:[.,'’ \\u00a0\\u202f]\\d{3})+(?:[.,]\\d+)?";
const plain = '\\d+(?:[.,]\\d*)?|[.,]\\d+';
const number = new RegExp(`^${sign}(?:${groups}|${plain})(?:[eE][+-]?\\d+)?$`);
/** A number, perhaps with a unit after it or a letter within it: 60, 35 cfm, 4k7, 1/16 in. */
const value = new RegExp(`^${sign}(?:${groups}|${plain})(?:[eE][+-]?\\d+)?(?: ?[^\\d\\s;,|][^;,|\\t]*)?$`);

/** Nobody writes a longer number; it bounds the work. */
const longest = 60;

/** Whether a cell begins like a quantity; a word or a sentence with a number at its end does not. */
export function isValue(cell: string): boolean {
  return cell.length <= longest && value.test(cell);
}

/** Whether a cell is a number and nothing else, whichever mark is the decimal one. */
export function isNumber(cell: string): boolean {
  return cell.length <= longest && number.test(cell);
}

/** The decimal mark of a table, as far as its cells are of one mind; `null` where they are not or none of them shows it. */
export function decimalOf(rows: readonly (readonly string[])[]): DecimalMark | null {
  let found: DecimalMark | null = null;
  for (const row of rows) {
    for (const cell of row) {
      const mark = markOf(cell);
      if (mark === null || mark === found) continue;
      if (found !== null) return null;
      found = mark;
    }
  }
  return found;
}

/** What the marks of one number show: 12,5 and 1.234,5 and 1.234.567 a comma; 1,234 alone nothing. */
function markOf(cell: string): DecimalMark | null {
  if (cell.length > longest || !hasMark(cell)) return null;
  const [, digits = ''] = /^[+\-−]?([\d.,'’ \u00a0\u202f]+)/.exec(cell) ?? [];
  const [first, last] = [/[.,]/.exec(digits), /[.,](?=[^.,]*$)/.exec(digits)];
  if (first === null || last === null) return null;
  const mark = last[0] as DecimalMark;
  if (first.index === last.index) return couldGroup.test(digits.trim()) ? null : mark;
  return first[0] === mark ? other(mark) : mark;
}

/** Most cells of most tables have none, and this is quick. */
function hasMark(cell: string): boolean {
  return cell.includes('.') || cell.includes(',');
}

const couldGroup = /^[1-9]\d{0,2}[.,]\d{3}$/;

function other(mark: DecimalMark): DecimalMark {
  return mark === ',' ? '.' : ',';
}

/**
 * A number that alone could be read in two ways, or has marks no field takes, as the rest of its table reads it: 1,234
 * is 1.234 among decimal commas and 1234 among decimal points. Any other cell stays as it is written.
 */
export function settled(cell: string, decimal: DecimalMark | null): string {
  if (cell.length > longest || !(hasMark(cell) || /['’]/.test(cell))) return cell;
  const [, sign = '', digits = '', rest = ''] = /^([+\-−]?)([\d.,'’]+)(.*)$/s.exec(cell) ?? [];
  if (/^\d{1,3}(?:['’]\d{3})+(?:[.,]\d+)?$/.test(digits)) return sign + digits.replace(/['’]/g, '') + rest;
  if (decimal === null || !couldGroup.test(digits)) return cell;
  return sign + digits.replace(/[.,]/, digits.includes(decimal) ? '.' : '') + rest;
}

/** Whether a cell is a number without a unit, in any way a field takes it, fractions too. */
export function isBare(cell: string): boolean {
  const text = tidyText(cell).replace(/^[+-] ?/, '');
  if (text.length > longest) return false;
  const read = readTypedNumber(text);
  return read.ok ? read.rest.trim() === '' : read.problem.reason === 'ambiguous' && isNumber(text);
}

/** A cell as a number, `null` where it is none. Thousands may be parted by the other mark or a blank. */
export function readNumber(cell: string, decimal: DecimalMark): number | null {
  const thousands = decimal === ',' ? /[.\s\u202f](?=\d{3}(?:\D|$))/g : /[,\s\u202f](?=\d{3}(?:\D|$))/g;
  const text = cell.trim().replace('−', '-').replace(thousands, '').replace(decimal, '.');
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(text)) return null;
  const value = Number(text);
  return Number.isFinite(value) ? value : null;
}
