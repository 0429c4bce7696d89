import { type MathLine, type MathNode, rowOf } from './equationTree.ts';
import { readTokens, type Token } from './readTokens.ts';

/**
 * Reads the equation of a card, plain Unicode text, into lines of trees. The grammar is that of handwriting: `·` and
 * standing side by side multiply, `/` divides what stands tight on both of its sides, ` / ` with spaces all of the
 * product before it; `^`, raised digits and `_` as usual; `√` takes one name or one pair of brackets; words are words.
 * A new line begins behind `;`, and behind `,` where another equation follows. Total: what it does not know stays a sign.
 */
export function readEquation(text: string): MathLine[] {
  return clauses(readTokens(text)).map(({ tokens, end }) => ({ node: readAll(tokens), end }));
}

interface Clause {
  readonly tokens: readonly Token[];
  readonly end: string;
}

const isSign = (token: Token | undefined, ...signs: readonly string[]) =>
  token?.kind === 'sign' && signs.includes(token.written);

/** Cut at `;`, and at a `,` outside all brackets behind which another equation stands. */
function clauses(tokens: readonly Token[]): Clause[] {
  const found: Clause[] = [];
  let from = 0;
  let depth = 0;
  tokens.forEach((token, i) => {
    if (isSign(token, ...opens)) depth += 1;
    if (isSign(token, ...closes)) depth -= 1;
    const isEnd = isSign(token, ';') || (isSign(token, ',') && defines(tokens.slice(i + 1)));
    if (depth !== 0 || !isEnd) return;
    found.push({ tokens: tokens.slice(from, i), end: token.kind === 'sign' ? token.written : '' });
    from = i + 1;
  });
  return [...found, { tokens: tokens.slice(from), end: '' }];
}

/** Whether an equals sign comes before the next comma and before any word. */
function defines(tokens: readonly Token[]): boolean {
  let depth = 0;
  for (const token of tokens) {
    if (isSign(token, ...opens)) depth += 1;
    if (isSign(token, ...closes)) depth -= 1;
    if (depth > 0) continue;
    if (isSign(token, '=', '≈')) return true;
    if (isSign(token, ',', ';') || token.kind === 'word') return false;
  }
  return false;
}

const pairs: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };
const opens = Object.keys(pairs);
const closes = Object.values(pairs);
/** What stands between the terms of a sum, so that nothing on its far side is divided. */
const between = ['+', '−', '=', '≈', '<', '>', '≤', '≥', ',', ':', '…', '×', 'Σ', '∫', '±'];

interface Reader {
  readonly tokens: readonly Token[];
  at: number;
}

function readAll(tokens: readonly Token[]): MathNode {
  const reader = { tokens, at: 0 };
  const items = readItems(reader, null);
  return rowOf(items);
}

/** Everything up to a closing bracket, or to the end. */
function readItems(reader: Reader, close: string | null): MathNode[] {
  const items: MathNode[] = [];
  /** Where the term and where what stands tight began. */
  let term = 0;
  let tight = 0;
  for (let token = peek(reader); token !== undefined; token = peek(reader)) {
    if (close !== null && isSign(token, close)) break;
    if (isSign(token, '/')) {
      reader.at += 1;
      const from = token.apart ? term : tight;
      const over = rowOf(items.splice(from));
      items.push({ kind: 'fraction', over, under: rowOf(readTight(reader)) });
      continue;
    }
    const isBetween = isSign(token, ...between) || token.kind === 'word';
    const isTimes = isSign(token, '·') && !isPowerOfTen(reader, items);
    // A function goes with its argument, across the space between them.
    if (token.apart && !lastIsFunction(items)) tight = items.length;
    items.push(readFactor(reader));
    if (isBetween || isTimes) tight = items.length;
    if (isBetween) term = items.length;
  }
  return items;
}

function lastIsFunction(items: readonly MathNode[]): boolean {
  const last = items.at(-1);
  return last?.kind === 'function' || (last?.kind === 'power' && last.base.kind === 'function');
}

/** Whether the dot at hand stands in one number, like that of 2.9·10⁻⁵. */
function isPowerOfTen({ tokens, at }: Reader, items: readonly MathNode[]): boolean {
  const [ten, raised] = tokens.slice(at + 1);
  return (
    items.at(-1)?.kind === 'number' &&
    ten?.written === '10' &&
    raised !== undefined &&
    isRaised(raised.written)
  );
}

/** What a fraction has below its line: factors without a space or sign between them. */
function readTight(reader: Reader): MathNode[] {
  const items: MathNode[] = [];
  for (let token = peek(reader); token !== undefined; token = peek(reader)) {
    const isFirst = items.length === 0;
    const goesOn =
      isFirst || (!token.apart && isFactor(token) && !isSign(token, '/')) || lastIsFunction(items);
    if (!goesOn) break;
    const before = items.at(-1);
    // Two pairs of brackets side by side are one factor each: the second is not divided by.
    if (!isFirst && isSign(token, ...opens) && before?.kind === 'group') break;
    items.push(readFactor(reader));
  }
  return items;
}

function isFactor(token: Token): boolean {
  return token.kind !== 'sign' || isSign(token, '√', ...opens);
}

/** An atom with the powers on it. */
function readFactor(reader: Reader): MathNode {
  let node = readAtom(reader);
  for (let token = peek(reader); token !== undefined && !token.apart; token = peek(reader)) {
    if (token.kind !== 'sign') break;
    if (isRaised(token.written)) {
      reader.at += 1;
      node = { kind: 'power', base: node, exponent: raisedNumber(token.written), written: token.written };
    } else if (token.written === '^') {
      reader.at += 1;
      const from = reader.at;
      const exponent = readExponent(reader);
      const written = reader.tokens.slice(from, reader.at).map((each) => each.written);
      node = { kind: 'power', base: node, exponent, written: `^${written.join('')}` };
    } else break;
  }
  return node;
}

function readAtom(reader: Reader): MathNode {
  const token = peek(reader);
  if (token === undefined) return { kind: 'row', items: [] };
  reader.at += 1;
  if (token.kind !== 'sign') {
    const { apart: _, ...atom } = token;
    return atom;
  }
  if (token.written === '√') return { kind: 'root', inside: readAtom(reader) };
  const close = pairs[token.written];
  if (close === undefined) return { kind: 'operator', written: token.written };
  const inside = rowOf(readItems(reader, close));
  const isClosed = isSign(peek(reader), close);
  if (isClosed) reader.at += 1;
  return { kind: 'group', open: token.written, close: isClosed ? close : '', inside };
}

/** A sign if there is one, then one atom. */
function readExponent(reader: Reader): MathNode {
  const token = peek(reader);
  if (!isSign(token, '−', '+')) return readAtom(reader);
  reader.at += 1;
  return rowOf([{ kind: 'operator', written: token?.written ?? '' }, readAtom(reader)]);
}

const isRaised = (written: string) => /^⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+$/.test(written);

const digits = '⁰¹²³⁴⁵⁶⁷⁸⁹';

function raisedNumber(raised: string): MathNode {
  const written = [...raised].map((each) => digits.indexOf(each)).filter((digit) => digit >= 0);
  const number: MathNode = { kind: 'number', written: written.join('') };
  return raised.startsWith('⁻') ? rowOf([{ kind: 'operator', written: '−' }, number]) : number;
}

function peek({ tokens, at }: Reader): Token | undefined {
  return tokens[at];
}
