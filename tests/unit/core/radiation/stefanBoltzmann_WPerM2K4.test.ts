import { expect, test } from 'vitest';
import { stefanBoltzmann_WPerM2K4 } from '../../../../src/core/radiation/stefanBoltzmann_WPerM2K4.ts';

test('follows from the exact constants of the SI: 2π⁵k⁴/(15h³c²)', () => {
  const [k, h, c] = [1.380649e-23, 6.62607015e-34, 299_792_458];
  const derived = (((2 * Math.PI ** 5 * k) / 15) * (k / h) ** 3) / c ** 2;
  expect(stefanBoltzmann_WPerM2K4 / derived).toBeCloseTo(1, 9);
});
