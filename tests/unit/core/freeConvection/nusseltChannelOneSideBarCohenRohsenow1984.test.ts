import { describe, expect, test } from 'vitest';
import { nusseltChannelOneSideBarCohenRohsenow1984 } from '../../../../src/core/freeConvection/nusseltChannelOneSideBarCohenRohsenow1984.ts';

describe('nusseltChannelOneSideBarCohenRohsenow1984', () => {
  test('in a narrow channel the air leaves as warm as the wall: El/12', () => {
    expect(nusseltChannelOneSideBarCohenRohsenow1984(1e-3) / (1e-3 / 12)).toBeCloseTo(1, 4);
  });

  test('in a wide channel each wall is a plate of its own', () => {
    const elenbaas = 1e9;
    const onePlate = elenbaas ** 0.25 / Math.sqrt(2.873);
    expect(nusseltChannelOneSideBarCohenRohsenow1984(elenbaas) / onePlate).toBeCloseTo(1, 4);
  });

  test('without buoyancy nothing moves', () => {
    expect(nusseltChannelOneSideBarCohenRohsenow1984(0)).toBe(0);
  });
});
