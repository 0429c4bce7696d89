import { type MathNode, plainText, powerOf, rowOf } from './equationTree.ts';

const between = ['+', '−', '=', ',', ';'];
/** More terms than this are not written out. */
const mostTerms = 12;

/** Sums over an index written out, `Σ R_i` as `(R_1 + R_2)`, as far as names with numbers for the index are known. */
export function spelledOut(
  items: readonly MathNode[],
  isKnown: (name: string) => boolean,
): readonly MathNode[] {
  const at = items.findIndex((item) => item.kind === 'operator' && item.written === 'Σ');
  if (at < 0) return items;
  const behind = items.slice(at + 1);
  const end = behind.findIndex((item) => item.kind === 'operator' && between.includes(item.written));
  const term = end < 0 ? behind : behind.slice(0, end);
  const rest = spelledOut(behind.slice(term.length), isKnown);
  const terms = termsOf(rowOf(term), isKnown);
  const sum: readonly MathNode[] =
    terms.length === 0 ? items.slice(at, at + 1 + term.length) : [inBrackets(terms)];
  return [...items.slice(0, at), ...sum, ...rest];
}

function termsOf(term: MathNode, isKnown: (name: string) => boolean): MathNode[] {
  const indexed = names(term).filter((name) => name.endsWith('_i'));
  if (indexed.length === 0) return [];
  const terms: MathNode[] = [];
  for (let i = 1; indexed.every((name) => isKnown(name.replace(/i$/, `${i}`))); i++)
    terms.push(at(term, `${i}`));
  return terms.length <= mostTerms ? terms : [];
}

function names(node: MathNode): string[] {
  switch (node.kind) {
    case 'symbol':
      return [plainText(node)];
    case 'row':
      return node.items.flatMap(names);
    case 'group':
    case 'root':
      return names(node.inside);
    case 'fraction':
      return [...names(node.over), ...names(node.under)];
    case 'power':
      return [...names(node.base), ...names(node.exponent)];
    default:
      return [];
  }
}

/** The term for one value of its index. */
function at(node: MathNode, index: string): MathNode {
  switch (node.kind) {
    case 'symbol':
      return node.sub === 'i'
        ? { ...node, sub: index, written: node.written.replace('_i', `_${index}`) }
        : node;
    case 'row':
      return rowOf(node.items.map((item) => at(item, index)));
    case 'group':
    case 'root':
      return { ...node, inside: at(node.inside, index) };
    case 'fraction':
      return { ...node, over: at(node.over, index), under: at(node.under, index) };
    case 'power':
      return powerOf(node, at(node.base, index), at(node.exponent, index));
    default:
      return node;
  }
}

function inBrackets(terms: readonly MathNode[]): MathNode {
  const plus: MathNode = { kind: 'operator', written: '+' };
  const items = terms.flatMap((term, i) => [
    ...(i > 0 ? [plus] : []),
    ...(term.kind === 'row' ? term.items : [term]),
  ]);
  return { kind: 'group', open: '(', close: ')', inside: rowOf(items) };
}
