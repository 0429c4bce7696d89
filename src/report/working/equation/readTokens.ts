import type { MathFunction, MathNumber, MathSymbol, MathWord } from './equationTree.ts';

/** What stands for itself: an atom, or a sign that the reader of the tree has to weigh. */
export type Token = (MathSymbol | MathNumber | MathWord | MathFunction | Sign) & {
  /** Whether a space stands before it. */
  readonly apart: boolean;
};

interface Sign {
  readonly kind: 'sign';
  readonly written: string;
}

const spaces = /^\s+/;
const numberAt = /^\d+(?:\.\d+)?/;
const vulgarAt = /^[½⅓⅔¼¾⅛]/;
const raisedAt = /^⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/;
const lettersAt = /^[A-Za-z]+/;
const greekAt = /^[\u0370-\u03ff\u1d00-\u1eff\u00b5ℓ]\u0307?/;
const subAt = /^_(?:√?[\p{L}\d]+(?:→\p{L}+)?)/u;
const loweredAt = /^[₀₁₂₃₄₅₆₇₈₉]+/;
const markAt = /^[⁺*]/;
/** What stands behind a number and a space: `J/(kg·K)`, `W/m²`. */
const unitAt = /^[A-Za-zΩµ]+[²³]?(?:[·/](?:[A-Za-z]+[²³]?|\([A-Za-z²³·]+\)))*/;
const degreeAt = /^°[CF]?/;

const functions = [
  'ln',
  'log',
  'exp',
  'sin',
  'cos',
  'tan',
  'sinh',
  'cosh',
  'tanh',
  'arctan',
  'artanh',
  'max',
  'min',
  'table',
];
const shortWords = ['on', 'of', 'at', 'in', 'to', 'by', 'is', 'up', 'or', 'an', 'as', 'if', 'no'];

/** Cuts an equation into names, numbers, words and signs. Whatever it does not know is a sign, so nothing is lost. */
export function readTokens(text: string): Token[] {
  const tokens: Token[] = [];
  let rest = text.normalize('NFC');
  while (rest !== '') {
    const [blank = ''] = spaces.exec(rest) ?? [];
    rest = rest.slice(blank.length);
    if (rest === '') break;
    const [token, length] = nextToken(rest, tokens.at(-1), blank !== '');
    tokens.push({ ...token, apart: blank !== '' });
    rest = rest.slice(length);
  }
  return withArticles(tokens);
}

type Cut = readonly [token: MathSymbol | MathNumber | MathWord | MathFunction | Sign, length: number];

function nextToken(rest: string, before: Token | undefined, apart: boolean): Cut {
  const [written = ''] = numberAt.exec(rest) ?? vulgarAt.exec(rest) ?? [];
  if (written !== '') return [{ kind: 'number', written }, written.length];
  const [degree = ''] = degreeAt.exec(rest) ?? [];
  if (degree !== '') return [{ kind: 'word', written: degree }, degree.length];
  const [letters = ''] = lettersAt.exec(rest) ?? [];
  const [unit = ''] = apart && before?.kind === 'number' && !isWord(letters) ? (unitAt.exec(rest) ?? []) : [];
  if (unit !== '') return [{ kind: 'word', written: unit }, unit.length];
  if (letters !== '') return lettersToken(rest, letters);
  const [greek = ''] = greekAt.exec(rest) ?? [];
  // A capital sigma is a sum; before a letter it belongs to what it sums, but is a sign of its own.
  if (greek !== '' && greek !== 'Σ') return greekToken(rest, greek);
  const [raised = ''] = raisedAt.exec(rest) ?? [];
  if (raised !== '' && !apart && before) return [{ kind: 'sign', written: raised }, raised.length];
  const [sign = ''] = rest;
  return [{ kind: 'sign', written: sign }, sign.length];
}

function lettersToken(rest: string, letters: string): Cut {
  if (functions.includes(letters)) {
    const [sub = ''] = loweredAt.exec(rest.slice(letters.length)) ?? [];
    const written = letters + sub;
    return [{ kind: 'function', base: letters, sub, written }, written.length];
  }
  const after = rest.slice(letters.length);
  if (isWord(letters) && !/^[_*⁺₀-₉]/.test(after)) {
    // A hyphen inside a word is part of it.
    const [more = ''] = /^(?:[-’][A-Za-z]+)*/.exec(after) ?? [];
    return [{ kind: 'word', written: letters + more }, letters.length + more.length];
  }
  return symbolToken(rest, firstName(letters));
}

/** Words have three letters at least and a vowel among them; a few have two. */
function isWord(letters: string): boolean {
  return shortWords.includes(letters) || (/^[A-Za-z]?[a-z]{2,}$/.test(letters) && /[aeiouy]/.test(letters));
}

/** The first name of letters that stand together: `Re`, `NTU`, else a single one, so that `mH` is m times H. */
function firstName(letters: string): string {
  return /^(?:[A-Z][a-z](?![a-z])|[A-Z]{2,}(?![a-z]))/.exec(letters)?.[0] ?? letters.slice(0, 1);
}

/** A difference goes with what differs. */
function greekToken(rest: string, greek: string): Cut {
  if (greek !== 'Δ') return symbolToken(rest, greek);
  const [letter = ''] = /^\p{L}\u0307?/u.exec(rest.slice(1)) ?? [];
  return symbolToken(rest, greek + letter);
}

function symbolToken(rest: string, base: string): Cut {
  let written = base;
  const take = (pattern: RegExp) => {
    const [taken = ''] = pattern.exec(rest.slice(written.length)) ?? [];
    written += taken;
    return taken;
  };
  const lowered = take(loweredAt);
  const sub = lowered + take(subAt).slice(1);
  const mark = take(markAt);
  return [{ kind: 'symbol', base, sub, mark, written }, written.length];
}

/** What only its neighbours tell: "a" between words is an article. */
function withArticles(tokens: readonly Token[]): Token[] {
  return tokens.map((token, i) => {
    const isArticle =
      token.kind === 'symbol' &&
      token.written === 'a' &&
      tokens[i - 1]?.kind === 'word' &&
      tokens[i + 1]?.apart === true;
    return isArticle ? { kind: 'word', written: token.written, apart: token.apart } : token;
  });
}
