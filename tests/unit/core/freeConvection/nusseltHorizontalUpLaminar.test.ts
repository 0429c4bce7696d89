import { expect, test } from 'vitest';
import { nusseltHorizontalUpLaminar } from '../../../../src/core/freeConvection/nusseltHorizontalUpLaminar.ts';

test('16 times the Rayleigh number has twice the Nusselt number', () => {
  expect(nusseltHorizontalUpLaminar(16e6) / nusseltHorizontalUpLaminar(1e6)).toBeCloseTo(2, 12);
});
