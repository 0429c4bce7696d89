import { expect, test } from 'vitest';
import { nusseltHorizontalUpTurbulent } from '../../../../src/core/freeConvection/nusseltHorizontalUpTurbulent.ts';

test('8 times the Rayleigh number has twice the Nusselt number', () => {
  expect(nusseltHorizontalUpTurbulent(8e6) / nusseltHorizontalUpTurbulent(1e6)).toBeCloseTo(2, 12);
});
