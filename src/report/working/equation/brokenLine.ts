import { type MathNode, rowOf } from './equationTree.ts';
import { width_em } from './width.ts';

/**
 * An equation in as many lines as it needs, each at most `most_em` wide where that can be: broken before a plus, a minus
 * or an equals sign, and inside a pair of brackets only where the pair alone fills more than half a line.
 */
export function brokenLine(node: MathNode, most_em: number): MathNode[] {
  if (width_em(node) <= most_em) return [node];
  const lines: MathNode[][] = [[]];
  for (const piece of pieces(opened(node, most_em))) {
    const last = lines.at(-1) as MathNode[];
    const isFull = last.length > 0 && width_em(rowOf([...last, ...piece])) > most_em;
    if (isFull) lines.push([...piece]);
    else last.push(...piece);
  }
  return lines.map(rowOf);
}

/** The items of a row, with the brackets of what is too wide as signs among them. */
function opened(node: MathNode, most_em: number): MathNode[] {
  if (node.kind === 'row') return node.items.flatMap((item) => opened(item, most_em));
  if (node.kind !== 'group' || width_em(node) <= most_em / 2) return [node];
  return [sign(node.open), ...opened(node.inside, most_em), sign(node.close)];
}

function sign(written: string): MathNode {
  return { kind: 'operator', written };
}

const before = ['+', '−', '='];

/** What stays together: a term with the sign before it. */
function pieces(items: readonly MathNode[]): MathNode[][] {
  const found: MathNode[][] = [[]];
  for (const item of items) {
    if (item.kind === 'operator' && before.includes(item.written)) found.push([]);
    found.at(-1)?.push(item);
  }
  return found;
}
