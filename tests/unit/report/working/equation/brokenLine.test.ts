import { expect, test } from 'vitest';
import { cards } from '../../../../../src/core/cards.ts';
import { brokenLine } from '../../../../../src/report/working/equation/brokenLine.ts';
import { plainText } from '../../../../../src/report/working/equation/equationTree.ts';
import { readEquation } from '../../../../../src/report/working/equation/readEquation.ts';
import { width_em } from '../../../../../src/report/working/equation/width.ts';

const nodes = cards.flatMap(({ equation }) => readEquation(equation).map(({ node }) => node));

test('what fits stays on its line', () => {
  for (const node of nodes) expect(brokenLine(node, 200)).toEqual([node]);
});

test('a broken line loses nothing, and its pieces are narrower', () => {
  for (const node of nodes) {
    const lines = brokenLine(node, 25);
    expect(lines.map(plainText).join('')).toBe(plainText(node));
    for (const line of lines) expect(width_em(line)).toBeLessThanOrEqual(width_em(node));
  }
});

test('a polynomial is broken before a sign, inside its brackets where they fill the line', () => {
  const [clause] = readEquation('f·Re = 24·(1 − 1.3553·α + 1.9467·α² − 1.7012·α³ + 0.9564·α⁴)');
  const lines = brokenLine(clause?.node ?? { kind: 'word', written: '' }, 25).map(plainText);
  expect(lines).toEqual(['f·Re=24·(1−1.3553·α+1.9467·α²', '−1.7012·α³+0.9564·α⁴)']);
});
