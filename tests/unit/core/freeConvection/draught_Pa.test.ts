import { describe, expect, test } from 'vitest';
import { draught_Pa } from '../../../../src/core/freeConvection/draught_Pa.ts';

describe('draught_Pa', () => {
  test('is nil for air as dense as the room’s, and on the level', () => {
    expect(draught_Pa(1.2, 1.2, 0.5)).toBe(0);
    expect(draught_Pa(1.2, 0.9, 0)).toBe(0);
  });

  test('drives warm air up and cold air down', () => {
    expect(draught_Pa(1.2, 1.1, 0.1)).toBeGreaterThan(0);
    expect(draught_Pa(1.2, 1.3, 0.1)).toBeLessThan(0);
    expect(draught_Pa(1.2, 1.1, -0.1)).toBe(-draught_Pa(1.2, 1.1, 0.1));
  });

  test('of two columns on top of each other is their sum', () => {
    expect(draught_Pa(1.2, 1.1, 0.1) + draught_Pa(1.2, 1.0, 0.2)).toBeCloseTo(
      9.80665 * (0.1 * 0.1 + 0.2 * 0.2),
      12,
    );
  });
});
