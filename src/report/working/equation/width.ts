import type { MathNode } from './equationTree.ts';

/** Of a script, beside the text it stands at. */
const script = 0.7;

/** About how wide a tree is set, in ems: near enough to choose a size of type that fits its column. */
export function width_em(node: MathNode): number {
  switch (node.kind) {
    case 'row':
      return node.items.reduce((sum, item) => sum + width_em(item), 0);
    case 'group':
      return width_em(node.inside) + 0.8;
    case 'fraction':
      return Math.max(width_em(node.over), width_em(node.under)) + 0.3;
    case 'power':
      return width_em(node.base) + script * width_em(node.exponent);
    case 'root':
      return width_em(node.inside) + 0.8;
    case 'symbol':
      return 0.65 * node.base.length + script * 0.6 * (node.sub.length + node.mark.length);
    case 'operator':
      return ['·', ',', ';'].includes(node.written) ? 0.6 : 1.3;
    case 'word':
      return 0.55 * node.written.length + 0.5;
    default:
      return 0.62 * node.written.length;
  }
}
