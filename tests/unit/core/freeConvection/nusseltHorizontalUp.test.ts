import { expect, test } from 'vitest';
import { nusseltHorizontalUp } from '../../../../src/core/freeConvection/nusseltHorizontalUp.ts';
import { nusseltHorizontalUpLaminar } from '../../../../src/core/freeConvection/nusseltHorizontalUpLaminar.ts';
import { nusseltHorizontalUpTurbulent } from '../../../../src/core/freeConvection/nusseltHorizontalUpTurbulent.ts';

test('a small plate is laminar, a large one turbulent', () => {
  expect(nusseltHorizontalUp(1e5)).toBe(nusseltHorizontalUpLaminar(1e5));
  expect(nusseltHorizontalUp(1e9)).toBe(nusseltHorizontalUpTurbulent(1e9));
});

test('the change between them, at (0.54/0.15)^12, has no jump', () => {
  const crossing = (0.54 / 0.15) ** 12;
  const step = nusseltHorizontalUp(crossing * 1.000001) - nusseltHorizontalUp(crossing * 0.999999);
  expect(step).toBeGreaterThan(0);
  expect(step).toBeLessThan(1e-4);
});
