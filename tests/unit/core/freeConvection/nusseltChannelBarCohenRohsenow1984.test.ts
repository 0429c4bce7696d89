import { describe, expect, test } from 'vitest';
import { nusseltChannelBarCohenRohsenow1984 } from '../../../../src/core/freeConvection/nusseltChannelBarCohenRohsenow1984.ts';

describe('nusseltChannelBarCohenRohsenow1984', () => {
  test('in a narrow channel the air leaves as warm as the wall: El/24', () => {
    expect(nusseltChannelBarCohenRohsenow1984(1e-3) / (1e-3 / 24)).toBeCloseTo(1, 4);
  });

  test('in a wide channel each wall is a plate of its own', () => {
    const elenbaas = 1e9;
    const onePlate = elenbaas ** 0.25 / Math.sqrt(2.873);
    expect(nusseltChannelBarCohenRohsenow1984(elenbaas) / onePlate).toBeCloseTo(1, 4);
  });

  test('without buoyancy nothing moves', () => {
    expect(nusseltChannelBarCohenRohsenow1984(0)).toBe(0);
  });
});
