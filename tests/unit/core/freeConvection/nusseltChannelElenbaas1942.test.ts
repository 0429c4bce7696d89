import { describe, expect, test } from 'vitest';
import { nusseltChannelElenbaas1942 } from '../../../../src/core/freeConvection/nusseltChannelElenbaas1942.ts';

describe('nusseltChannelElenbaas1942', () => {
  test('in a narrow channel the air leaves as warm as the wall: El/24', () => {
    expect(nusseltChannelElenbaas1942(1e-3) / (1e-3 / 24)).toBeCloseTo(1, 4);
  });

  test('in a wide channel each wall is a plate of its own', () => {
    const elenbaas = 1e9;
    // 35^¾/24: the exponential opened for small arguments.
    const onePlate = (elenbaas ** 0.25 * 35 ** 0.75) / 24;
    expect(nusseltChannelElenbaas1942(elenbaas) / onePlate).toBeCloseTo(1, 4);
  });

  test('without buoyancy nothing moves', () => {
    expect(nusseltChannelElenbaas1942(0)).toBe(0);
  });
});
