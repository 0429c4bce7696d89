import { expect, test } from 'vitest';
import { nusseltVerticalPlateChurchillChu1975 } from '../../../../src/core/freeConvection/nusseltVerticalPlateChurchillChu1975.ts';

test.each([1e3, 1e6, 1e9])('the roots are the powers of the formula at Rayleigh number %d', (Ra) => {
  const written = (0.825 + (0.387 * Ra ** (1 / 6)) / (1 + (0.492 / 0.7) ** (9 / 16)) ** (8 / 27)) ** 2;
  expect(nusseltVerticalPlateChurchillChu1975(Ra, 0.7) / written).toBeCloseTo(1, 12);
});

test('conduction is left where nothing moves', () => {
  expect(nusseltVerticalPlateChurchillChu1975(0, 0.7)).toBeCloseTo(0.825 ** 2, 12);
});
