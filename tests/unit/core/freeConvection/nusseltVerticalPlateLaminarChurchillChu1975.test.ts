import { expect, test } from 'vitest';
import { nusseltVerticalPlateChurchillChu1975 } from '../../../../src/core/freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { nusseltVerticalPlateLaminarChurchillChu1975 } from '../../../../src/core/freeConvection/nusseltVerticalPlateLaminarChurchillChu1975.ts';

test.each([1e3, 1e6, 1e9])('the roots are the powers of the formula at Rayleigh number %d', (Ra) => {
  const written = 0.68 + (0.67 * Ra ** 0.25) / (1 + (0.492 / 0.7) ** (9 / 16)) ** (4 / 9);
  expect(nusseltVerticalPlateLaminarChurchillChu1975(Ra, 0.7) / written).toBeCloseTo(1, 12);
});

test.each([1e4, 1e6, 1e8])(
  'both formulas of the authors tell the same within 20 %% at Rayleigh number %d',
  (Ra) => {
    const ratio =
      nusseltVerticalPlateLaminarChurchillChu1975(Ra, 0.7) / nusseltVerticalPlateChurchillChu1975(Ra, 0.7);
    expect(Math.abs(ratio - 1)).toBeLessThan(0.2);
  },
);
