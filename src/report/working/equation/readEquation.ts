import { type MathClause, type MathNode, rowOf } from './equationTree.ts';
import { readTokens, type Token } from './readTokens.ts';

/**
 * Reads the equation of a card, plain Unicode text, into clauses of trees. The grammar is that of handwriting: `·` and
 * standing side by side multiply, `/` has the product before it above its line and the one factor behind it below;
 * `^`, raised digits and `_` as usual; `√` takes one name or one pair of brackets; words are words. A clause
 * ends before `;`, and behind `,` where another equation follows. Total: what it does not know stays a sign.
 */
export function readEquation(text: string): MathClause[] {
  return clauses(readTokens(text)).map(({ tokens, end }) => ({
    node: readAll(tokens),
    end,
    equates: defines(tokens),
  }));
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

/** Whether an equation comes next: an equals sign, and no comma or word before it; words may lead to one with a colon. */
function defines(tokens: readonly Token[]): boolean {
  let depth = 0;
  const colon = tokens.findIndex((token) => isSign(token, ':'));
  const leads = tokens.slice(0, Math.max(colon, 0)).every(({ kind }) => kind === 'word');
  for (const token of leads ? tokens.slice(colon + 1) : tokens) {
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
const between = ['+', '−', '=', '≈', '<', '>', '≤', '≥', ',', ';', ':', '…', '×', 'Σ', '∫', '±'];

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
  /** Where the product at hand began, behind the last fraction in it. */
  let product = 0;
  for (let token = peek(reader); token !== undefined; token = peek(reader)) {
    if (close !== null && isSign(token, close)) break;
    if (isSign(token, '/')) {
      reader.at += 1;
      const over = rowOf(items.splice(startOfNumerator(items, product)));
      items.push({ kind: 'fraction', over, under: rowOf(readBelow(reader)) });
      product = items.length;
      continue;
    }
    items.push(readFactor(reader));
    const isFirstDot = isSign(token, '·') && items.length === product + 1;
    if (isFirstDot || isSign(token, ...between) || token.kind === 'word') product = items.length;
  }
  return items;
}

/** The whole product, but of a differential quotient only what is a differential. */
function startOfNumerator(items: readonly MathNode[], product: number): number {
  const d = items.length - 2;
  const before = items[d];
  return before?.kind === 'symbol' && before.written === 'd' && items[d + 1]?.kind === 'symbol' ? d : product;
}

function lastIsFunction(items: readonly MathNode[]): boolean {
  return items.at(-1)?.kind === 'function';
}

/** What a fraction has below its line: factors without a space or sign between them. */
function readBelow(reader: Reader): MathNode[] {
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
