import { describe, expect, test } from 'vitest';
import { frictionApparent } from '../../../../src/core/channel/frictionApparent.ts';
import { frictionApparentShah1978 } from '../../../../src/core/channel/frictionApparentShah1978.ts';

describe('frictionApparentShah1978', () => {
  test('far downstream the entrance has cost 0.674 velocity heads: 4x⁺·(f_app·Re − 24)', () => {
    const xPlus = 100;
    expect(4 * xPlus * (frictionApparentShah1978(xPlus) - 24)).toBeCloseTo(0.674, 4);
  });

  test('the composite of the limits stays within 8 % of it', () => {
    for (const xPlus of [5e-4, 1e-3, 5e-3, 0.01, 0.02, 0.05, 0.1, 1]) {
      const ratio = frictionApparent(xPlus, 24) / frictionApparentShah1978(xPlus);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.08);
    }
  });
});
