import { describe, expect, test } from 'vitest';
import { channelEmissivity } from '../../../../src/core/radiation/channelEmissivity.ts';
import { channelEmissivityGroove } from '../../../../src/core/radiation/channelEmissivityGroove.ts';

const emissivities = [0.02, 0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 0.95, 1];

describe('channelEmissivity', () => {
  test('a channel without depth is its base', () => {
    for (const emissivity of emissivities) {
      expect(channelEmissivity(emissivity, 0)).toBeCloseTo(emissivity, 12);
    }
  });

  test('a black channel is black', () => {
    expect(channelEmissivity(1, 5)).toBe(1);
  });

  test('a mirror radiates nothing, however deep', () => {
    expect(channelEmissivity(0, 5)).toBe(0);
  });

  test('walls that hardly radiate add up by area', () => {
    expect(channelEmissivity(1e-6, 3) / 7e-6).toBeCloseTo(1, 2);
  });

  test.each(emissivities)('is within 1.2 %% of the groove of strips at ε %f', (emissivity) => {
    for (const depthRatio of [0.1, 0.5, 1, 2, 4, 6, 10, 16, 30]) {
      const groove = channelEmissivityGroove(emissivity, depthRatio, 120);
      const within = 0.015; // 1.2 %, and 120 strips instead of 360
      expect(Math.abs(channelEmissivity(emissivity, depthRatio) / groove - 1)).toBeLessThan(within);
    }
  });
});
