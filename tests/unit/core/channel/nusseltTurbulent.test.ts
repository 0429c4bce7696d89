import { describe, expect, test } from 'vitest';
import { nusseltTurbulent } from '../../../../src/core/channel/nusseltTurbulent.ts';

describe('nusseltTurbulent', () => {
  test('a channel one diameter long does twice as well as an endless one', () => {
    expect(nusseltTurbulent(1e4, 0.71, 1) / nusseltTurbulent(1e4, 0.71, 1e18)).toBeCloseTo(2, 6);
  });

  test('at a Prandtl number of one it is (f/8)·(Re − 1000)', () => {
    const f = (0.79 * Math.log(1e4) - 1.64) ** -2;
    expect(nusseltTurbulent(1e4, 1, 1e18)).toBeCloseTo((f / 8) * 9000, 4);
  });
});
