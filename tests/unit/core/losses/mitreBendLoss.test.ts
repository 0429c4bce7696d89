import { expect, test } from 'vitest';
import { mitreBendLoss } from '../../../../src/core/losses/mitreBendLoss.ts';

test('mitreBendLoss is the sharp bend 0.42·s + 2.56·s³ with s = sin 45°', () => {
  const s = Math.sin(Math.PI / 4);
  const within = 0.005; // the method is stated with two digits
  expect(Math.abs(mitreBendLoss() - (0.42 * s + 2.56 * s ** 3))).toBeLessThan(within);
});
