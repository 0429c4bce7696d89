import { expect, test } from 'vitest';
import { radiationCoefficient_WPerM2K } from '../../../../src/core/radiation/radiationCoefficient_WPerM2K.ts';
import { radiationCoefficientAtMean_WPerM2K } from '../../../../src/core/radiation/radiationCoefficientAtMean_WPerM2K.ts';

test('lies below the exact coefficient, by at most 1.3 % up to 75 K', () => {
  for (const dT_K of [10, 50, 75]) {
    const ratio =
      radiationCoefficientAtMean_WPerM2K(1, 298 + dT_K / 2) /
      radiationCoefficient_WPerM2K(1, 298 + dT_K, 298);
    expect(ratio).toBeLessThan(1);
    expect(ratio).toBeGreaterThan(0.987);
  }
});
