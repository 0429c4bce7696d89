import { expect, test } from 'vitest';
import { longLeadResistance_KPerW } from '../../../../src/core/conduction/longLeadResistance_KPerW.ts';

test('a lead cut into thousands of slices, 2.5 decay lengths long, comes to the same within 2 %', () => {
  const [h, P, k, A] = [20, 6e-3, 390, 1.25e-6];
  const slice_m = (2.5 * Math.sqrt((k * A) / (h * P))) / 2000;
  // From the insulated tip to the foot: each slice adds its surface beside and its length in a row.
  let conductance_WPerK = 0;
  for (let i = 0; i < 2000; i++) {
    conductance_WPerK += h * P * slice_m;
    conductance_WPerK = 1 / (1 / conductance_WPerK + slice_m / (k * A));
  }
  const within = 0.02; // the tip of a lead that ends at 2.5 decay lengths
  expect(Math.abs(longLeadResistance_KPerW(h, P, k, A) * conductance_WPerK - 1)).toBeLessThan(within);
});
