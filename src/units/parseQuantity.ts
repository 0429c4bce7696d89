import { type Dimension, dimensions, type Unit, unitOf } from './dimensions.ts';
import { type Amount, readCompound } from './readCompound.ts';
import { readInfix } from './readInfix.ts';
import { type NumberProblem, readNumber } from './readNumber.ts';
import { dimensionOfSpelling, findSpelling } from './spellings.ts';
import { tidyText } from './tidyText.ts';
import { toSI } from './unit.ts';

type Finding =
  | NumberProblem
  | { readonly reason: 'empty' | 'noNumber' | 'severalUnits' }
  | { readonly reason: 'unknownUnit'; readonly unit: string }
  | { readonly reason: 'otherDimension'; readonly unit: string; readonly found: Dimension };

/** What is wrong with a text, as data; `describeProblem` words it. */
export type ParseProblem = {
  readonly ok: false;
  readonly text: string;
  readonly dimension: Dimension;
} & Finding;

export type ParseResult = { readonly ok: true; readonly value: number; readonly unit: string } | ParseProblem;

/** Nobody types more than this into a field; it bounds the work. */
const longestText = 100;

/**
 * A quantity as people type it → SI. The field gives the dimension, so that °F in a difference is a difference and C is
 * Celsius; a bare number is in `defaultUnit`. What could be read in two ways is refused, not guessed.
 */
export function parseQuantity(text: string, dimension: Dimension, defaultUnit: string): ParseResult {
  const fallback = unitOf(dimension, defaultUnit);
  const found = readAmount(text, dimension, fallback);
  if ('reason' in found) return { ok: false, text, dimension, ...found };
  const value = toSI(found.amount, found.unit);
  if (!Number.isFinite(value)) return { ok: false, text, dimension, reason: 'tooLarge' };
  if (value === 0 && found.amount !== 0 && found.unit.offset === 0)
    return { ok: false, text, dimension, reason: 'tooSmall' };
  // Adding zero turns -0 into 0.
  return { ok: true, value: value + 0, unit: found.unit.key };
}

function readAmount(text: string, dimension: Dimension, fallback: Unit): Amount | Finding {
  const typed = text.trim();
  if (typed.length > longestText) return { reason: 'notANumber' };
  const plain = tidyText(typed);
  if (plain === '') return { reason: 'empty' };
  const [, minus = '', body = ''] = /^([+-]?) ?(.*)$/.exec(plain) ?? [];
  const sign = minus === '-' ? -1 : 1;
  const found = readInfix(body, dimension) ?? readPlain(body, dimension, fallback);
  return 'reason' in found ? found : { ...found, amount: sign * found.amount };
}

function readPlain(body: string, dimension: Dimension, fallback: Unit): Amount | Finding {
  const number = readNumber(body);
  if (!number.ok) return dimensionOfSpelling(body) === null ? number.problem : { reason: 'noNumber' };
  const written = number.rest.trim();
  if (written === '') return { amount: number.value, unit: fallback };
  const unit = findSpelling(dimension, written);
  if (unit !== null) return { amount: number.value, unit };
  return readCompound(number.value, written, dimension) ?? judgeUnit(written);
}

/** Why this text after a number is no unit of the field. */
function judgeUnit(written: string): Finding {
  const found = dimensionOfSpelling(written);
  if (found !== null) return { reason: 'otherDimension', unit: written, found };
  if (/^[^a-z"'%‰/°µμΩΩ]/i.test(written)) return { reason: 'notANumber' };
  const words = written.split(/[ \d,+-]+/).filter((word) => word !== '');
  if (words.length > 1 && words.every((word) => dimensionOfSpelling(word) !== null))
    return { reason: 'severalUnits' };
  return { reason: 'unknownUnit', unit: written };
}

/** One sentence or two in plain words: what is wrong, and what the field takes. */
export function describeProblem(problem: ParseProblem): string {
  const { noun, examples } = dimensions[problem.dimension];
  const takes = `this field takes ${noun}, such as ${examples[0]} or ${examples[1]}.`;
  const quoted = quote(problem.text);
  switch (problem.reason) {
    case 'empty':
      return `Nothing stands here; ${takes}`;
    case 'notANumber':
      return `${quoted} is not a number; ${takes}`;
    case 'noNumber':
      return `${quoted} is a unit without a number; ${takes}`;
    case 'divisionByZero':
      return `${quoted} divides by zero; ${takes}`;
    case 'tooLarge':
      return `${quoted} is larger than any number that can be computed with; ${takes}`;
    case 'tooSmall':
      return `${quoted} is too close to zero to be told from it; ${takes}`;
    case 'ambiguous':
      return `${quoted} can be read as ${problem.readings[0]} or as ${problem.readings[1]}. Write one of these instead.`;
    case 'severalUnits':
      return `${quoted} has more than one unit; ${takes}`;
    case 'unknownUnit':
      return `${quote(problem.unit)} is not a unit known here; ${takes}`;
    case 'otherDimension':
      return `${quoted} is ${dimensions[problem.found].noun}; ${takes}`;
  }
}

/** Short enough to stand in a sentence, without line ends and other marks that do not print. */
function quote(text: string): string {
  const letters = [...text.replace(/[\s\p{C}]+/gu, ' ').trim()];
  return `«${letters.length > 40 ? `${letters.slice(0, 39).join('')}…` : letters.join('')}»`;
}
