import { describe, expect, test } from 'vitest';
import { standardPressure_Pa } from '../../../../src/core/air/standardPressure_Pa.ts';

describe('standardPressure_Pa', () => {
  test('is one atmosphere at sea level', () => expect(standardPressure_Pa(0)).toBe(101325));

  test('falls by the weight of the air below: dp/dH = −ρg', () => {
    const slope = (standardPressure_Pa(1) - standardPressure_Pa(-1)) / 2;
    expect(slope).toBeCloseTo(-1.225 * 9.80665, 3);
  });
});
