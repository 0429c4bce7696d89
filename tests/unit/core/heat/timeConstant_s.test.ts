import { expect, test } from 'vitest';
import { lumpedRise_K } from '../../../../src/core/heat/lumpedRise_K.ts';
import { timeConstant_s } from '../../../../src/core/heat/timeConstant_s.ts';

test('one time constant is 63.2 % of the final rise', () => {
  const tau_s = timeConstant_s(8, 3);
  expect(lumpedRise_K(1, 8, tau_s, 24) / 8).toBeCloseTo(0.632, 3);
});
