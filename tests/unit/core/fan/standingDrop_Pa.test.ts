import { describe, expect, test } from 'vitest';
import { standingDrop_Pa } from '../../../../src/core/fan/standingDrop_Pa.ts';

describe('standingDrop_Pa', () => {
  test('is so many velocity heads', () => {
    expect(standingDrop_Pa(10, 2, 1.2)).toBeCloseTo(24, 13);
    expect(standingDrop_Pa(10, 0, 1.2)).toBe(0);
  });

  test('turns with the flow, for air runs back just as hard', () => {
    expect(standingDrop_Pa(10, -2, 1.2)).toBe(-standingDrop_Pa(10, 2, 1.2));
  });
});
