import { describe, expect, test } from 'vitest';
import { saturationPressure_Pa } from '../../../../src/core/air/saturationPressure_Pa.ts';

describe('saturationPressure_Pa', () => {
  test('is the constant of the fit at the freezing point', () => {
    expect(saturationPressure_Pa(273.15)).toBeCloseTo(610.94, 8);
  });

  test('about doubles every ten kelvin at room temperature', () => {
    const factor = saturationPressure_Pa(303.15) / saturationPressure_Pa(293.15);
    expect(factor).toBeGreaterThan(1.75);
    expect(factor).toBeLessThan(1.95);
  });
});
