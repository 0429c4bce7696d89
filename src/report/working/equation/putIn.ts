import type { WorkingSymbol, WorkingValue } from '../types.ts';
import { type MathClause, type MathNode, plainText, powerOf, rowOf } from './equationTree.ts';
import { numberNode, signed } from './numberNode.ts';
import { spelledOut } from './spelledOut.ts';

type Known = ReadonlyMap<string, Pick<WorkingValue, 'amount' | 'unit'>>;

/**
 * The equation once more with the values in place of the names, a line for each: `K = 0.42·(1 − 0.61²) = 0.264`. Only
 * right of the equals signs, for on their left stand the names of what comes out. Where the right side is a table or
 * words, the result alone.
 */
export function putIn(
  clauses: readonly MathClause[],
  symbols: readonly WorkingSymbol[],
  result: WorkingValue,
): MathNode[] {
  const known: Known = new Map([...symbols, result].map((each) => [bare(each.symbol), each]));
  const sides = clauses.flatMap(({ node }) => sidesOf(node));
  const written = sides.flatMap((each) => lineOf(each, known));
  const isTold = sides.some(({ left }) => plainText(left) === bare(result.symbol));
  return isTold ? written : [...written, rowOf([name(result.symbol), ...outcome(result)])];
}

interface Sides {
  readonly left: MathNode;
  /** `null` where it is no formula. */
  readonly right: MathNode | null;
}

function lineOf({ left, right }: Sides, known: Known): MathNode[] {
  const value = known.get(plainText(left));
  const filled = right && valuesIn(right, known);
  const isFilled = filled !== null && plainText(filled) !== plainText(right as MathNode);
  const ends = value ? outcome(value) : [];
  if (!isFilled) return value ? [rowOf([left, ...ends])] : [];
  return [rowOf([left, equals, filled, ...ends])];
}

const equals: MathNode = { kind: 'operator', written: '=' };

/** Left and right of the first equals sign, without the words before the one and behind the other. */
function sidesOf(node: MathNode): Sides[] {
  const items = node.kind === 'row' ? node.items : [node];
  const at = items.findIndex((item) => item.kind === 'operator' && ['=', '≈'].includes(item.written));
  if (at < 0) return [];
  const isStop = (item: MathNode) =>
    item.kind === 'word' || (item.kind === 'operator' && [',', ';', ':', '…'].includes(item.written));
  const before = items.slice(0, at);
  const behind = items.slice(at + 1);
  const end = behind.findIndex(isStop);
  const right = end < 0 ? behind : behind.slice(0, end);
  const left = rowOf(before.slice(before.findLastIndex(isStop) + 1));
  return [{ left, right: right.length > 0 ? rowOf(right) : null }];
}

/** Names of several pieces, `f·Re` or `p_s(T)`, are looked for before their parts. */
const longestName = 4;

/** The same tree with numbers for what is known. */
function valuesIn(node: MathNode, known: Known): MathNode {
  switch (node.kind) {
    case 'row':
      return rowOf(
        filledItems(
          spelledOut(node.items, (name) => known.has(name)),
          known,
        ),
      );
    case 'group':
      return { ...node, inside: valuesIn(node.inside, known) };
    case 'fraction':
      return { ...node, over: valuesIn(node.over, known), under: valuesIn(node.under, known) };
    case 'power':
      return powerOf(node, inBrackets(valuesIn(node.base, known)), exponentIn(node.exponent, known));
    case 'root':
      return { ...node, inside: valuesIn(node.inside, known) };
    default: {
      const value = known.get(plainText(node));
      return value ? numberNode(value.amount) : node;
    }
  }
}

function filledItems(items: readonly MathNode[], known: Known): MathNode[] {
  const filled: MathNode[] = [];
  for (let at = 0; at < items.length; ) {
    const length = nameLength(items, at, known);
    const name = known.get(plainText(rowOf(items.slice(at, at + length))));
    const node = name ? numberNode(name.amount) : valuesIn(items[at] as MathNode, known);
    // Numbers side by side would read as one.
    if (isDigits(filled.at(-1)) && isDigits(node)) filled.push({ kind: 'operator', written: '·' });
    filled.push(node);
    at += name ? length : 1;
  }
  return filled;
}

function nameLength(items: readonly MathNode[], at: number, known: Known): number {
  for (let length = Math.min(longestName, items.length - at); length > 1; length--) {
    if (known.has(plainText(rowOf(items.slice(at, at + length))))) return length;
  }
  return 1;
}

/** Whether a node begins or ends with digits, so that another number beside it needs a sign between them. */
function isDigits(node: MathNode | undefined): boolean {
  if (node === undefined) return false;
  if (node.kind === 'row') return isDigits(node.items[0]);
  if (node.kind === 'power') return isDigits(node.base);
  return node.kind === 'number' || node.kind === 'fraction';
}

/** A number put in place of a name is one, though it is written as a product. */
function exponentIn(exponent: MathNode, known: Known): MathNode {
  const filled = valuesIn(exponent, known);
  return exponent.kind === 'symbol' ? inBrackets(filled) : filled;
}

/** A product under a power, as `1.2·10⁻⁵` is one. */
function inBrackets(node: MathNode): MathNode {
  return node.kind === 'row' ? { kind: 'group', open: '(', close: ')', inside: node } : node;
}

function name(symbol: string): MathNode {
  return { kind: 'word', written: symbol };
}

function outcome({ amount, unit }: Pick<WorkingValue, 'amount' | 'unit'>): MathNode[] {
  const number = signed(amount);
  return unit === '' || unit === '1' ? [equals, number] : [equals, number, { kind: 'word', written: unit }];
}

function bare(symbol: string): string {
  return symbol.normalize('NFC').replaceAll(/\s/g, '');
}
