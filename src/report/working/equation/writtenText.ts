import type { MathNode } from './equationTree.ts';

/** Signs that stand between two things, with a space on either side. */
const spaced = ['=', '≈', '+', '−', '×', '<', '>', '≤', '≥', '…'];
const closing = [',', ';', ':'];

/** A tree as one writes it on a line, with spaces for the eye; it reads back into the same tree. */
export function writtenText(node: MathNode): string {
  switch (node.kind) {
    case 'row':
      return node.items.reduce(
        (text, item, i) => `${text}${spaceBefore(node.items, i)}${writtenText(item)}`,
        '',
      );
    case 'group':
      return `${node.open}${writtenText(node.inside)}${node.close}`;
    case 'fraction':
      return `${writtenText(node.over)}/${writtenText(node.under)}`;
    case 'power':
      return `${writtenText(node.base)}${node.written}`;
    case 'root':
      return `√${writtenText(node.inside)}`;
    default:
      return node.written;
  }
}

function spaceBefore(items: readonly MathNode[], at: number): string {
  const item = items[at];
  const before = items[at - 1];
  if (item === undefined || before === undefined || isSign(item, closing)) return '';
  // A sign with no term before it belongs to what stands behind it.
  const first = items[at - 2];
  const leads = first === undefined || isSign(first, [...spaced, ...closing]);
  if (leads && isSign(before, ['−', '+'])) return '';
  const isApart = (node: MathNode) => node.kind === 'word' || isSign(node, spaced) || isSign(node, closing);
  const isApplied = before.kind === 'function' && item.kind !== 'group';
  return isApart(item) || isApart(before) || isApplied ? ' ' : '';
}

function isSign(node: MathNode, signs: readonly string[]): boolean {
  return node.kind === 'operator' && signs.includes(node.written);
}
