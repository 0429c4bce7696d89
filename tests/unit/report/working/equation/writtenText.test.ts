import { expect, test } from 'vitest';
import { cards } from '../../../../../src/core/cards.ts';
import { plainText } from '../../../../../src/report/working/equation/equationTree.ts';
import { readEquation } from '../../../../../src/report/working/equation/readEquation.ts';
import { writtenText } from '../../../../../src/report/working/equation/writtenText.ts';

test('every equation of a card reads back as it was written', () => {
  for (const { equation } of cards) {
    for (const { node } of readEquation(equation)) {
      const again = readEquation(writtenText(node));
      expect(again.map((clause) => plainText(clause.node) + clause.end).join('')).toBe(plainText(node));
    }
  }
});

test('signs between terms and words have spaces, products and powers have none', () => {
  const [clause] = readEquation('q=ε·σ·(T⁴−T_r⁴)');
  expect(writtenText(clause?.node ?? { kind: 'word', written: '' })).toBe('q = ε·σ·(T⁴ − T_r⁴)');
  const [sized] = readEquation('x = −3·b of the gap');
  expect(writtenText(sized?.node ?? { kind: 'word', written: '' })).toBe('x = −3·b of the gap');
});
