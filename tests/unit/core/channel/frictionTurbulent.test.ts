import { describe, expect, test } from 'vitest';
import { frictionTurbulent } from '../../../../src/core/channel/frictionTurbulent.ts';

describe('frictionTurbulent', () => {
  test('falls with the Reynolds number, and less than laminar friction does', () => {
    for (let Re = 4000; Re < 1e6; Re *= 1.5) {
      const ratio = frictionTurbulent(1.5 * Re) / frictionTurbulent(Re);
      expect(ratio).toBeLessThan(1);
      expect(ratio).toBeGreaterThan(1 / 1.5);
    }
  });
});
