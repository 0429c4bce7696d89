import { describe, expect, test } from 'vitest';
import { radiationCoefficient_WPerM2K } from '../../../../src/core/radiation/radiationCoefficient_WPerM2K.ts';
import { radiationFlux_WPerM2 } from '../../../../src/core/radiation/radiationFlux_WPerM2.ts';

describe('radiationCoefficient_WPerM2K', () => {
  test('times the difference is the flux', () => {
    const flux_WPerM2 = radiationFlux_WPerM2(0.85, 370, 298);
    expect(radiationCoefficient_WPerM2K(0.85, 370, 298) * 72).toBeCloseTo(flux_WPerM2, 9);
  });

  test('is finite where surface and room are alike', () => {
    expect(radiationCoefficient_WPerM2K(1, 300, 300)).toBeCloseTo(4 * 5.670374419e-8 * 300 ** 3, 12);
  });
});
