import { expect, test } from 'vitest';
import { churchillPrandtl } from '../../../../src/core/freeConvection/churchillPrandtl.ts';

test.each([0.01, 0.5, 0.71, 7])('the roots are the power 9/16 at Prandtl number %f', (prandtl) => {
  expect(churchillPrandtl(prandtl)).toBeCloseTo(1 + (0.492 / prandtl) ** (9 / 16), 12);
});
