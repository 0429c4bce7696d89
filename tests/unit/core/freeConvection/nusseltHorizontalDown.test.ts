import { expect, test } from 'vitest';
import { nusseltHorizontalDown } from '../../../../src/core/freeConvection/nusseltHorizontalDown.ts';
import { nusseltHorizontalUpLaminar } from '../../../../src/core/freeConvection/nusseltHorizontalUpLaminar.ts';

test('16 times the Rayleigh number has twice the Nusselt number', () => {
  expect(nusseltHorizontalDown(16e6) / nusseltHorizontalDown(1e6)).toBeCloseTo(2, 12);
});

test('a plate facing down keeps half of the heat of one facing up', () => {
  expect(nusseltHorizontalDown(1e6) / nusseltHorizontalUpLaminar(1e6)).toBeCloseTo(0.5, 12);
});
