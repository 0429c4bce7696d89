import { describe, expect, test } from 'vitest';
import { nusseltPlatesDeveloping } from '../../../../src/core/channel/nusseltPlatesDeveloping.ts';

describe('nusseltPlatesDeveloping', () => {
  test('falls along the channel, across both ends of the table', () => {
    for (let x = 1e-5; x < 10; x *= 1.1) {
      expect(nusseltPlatesDeveloping(1.1 * x)).toBeLessThan(nusseltPlatesDeveloping(x));
    }
  });

  test.each([5e-4, 0.2])('does not jump at the end of the table, %f', (end) => {
    const below = nusseltPlatesDeveloping(end * (1 - 1e-9));
    const above = nusseltPlatesDeveloping(end * (1 + 1e-9));
    expect(Math.abs(above / below - 1)).toBeLessThan(1e-4);
  });

  test('what the inlet added is the same for every long channel: x*·(Nu − Nu∞) is one number', () => {
    const added = (x: number) => x * (nusseltPlatesDeveloping(x) - 7.5407);
    for (const x of [0.05, 0.1, 0.2, 0.5]) {
      const within = 1.5e-4 + 3e-4 * x; // four digits of the table, and 7.541 for 7.5407 beyond it
      expect(Math.abs(added(x) - 0.0318)).toBeLessThan(within);
    }
  });
});
