import { expect, test } from 'vitest';
import { gravity_mPerS2 } from '../../../../src/core/freeConvection/gravity_mPerS2.ts';

test('is the standard value, ISO 80000-3', () => {
  expect(gravity_mPerS2).toBe(9.80665);
});
