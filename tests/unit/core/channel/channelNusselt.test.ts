import { describe, expect, test } from 'vitest';
import { channelNusselt, prepareNusselt } from '../../../../src/core/channel/channelNusselt.ts';
import { nusseltDeveloping, prepareDeveloping } from '../../../../src/core/channel/nusseltDeveloping.ts';
import { nusseltTurbulent } from '../../../../src/core/channel/nusseltTurbulent.ts';

describe('channelNusselt', () => {
  const channel = prepareNusselt(3.9e-3, 20e-3, 50e-3);

  test('knows the hydraulic diameter it belongs to', () => {
    expect(channel.hydraulic_m).toBeCloseTo((2 * 3.9 * 20) / 23.9 / 1000, 15);
  });

  test('in laminar flow it is the developing form, changed from √A to the hydraulic diameter', () => {
    const root_m = Math.sqrt(3.9e-3 * 20e-3);
    const reynoldsOnRoot = (1500 * root_m) / channel.hydraulic_m;
    const zStar = 50e-3 / (root_m * reynoldsOnRoot * 0.71);
    const onRoot = nusseltDeveloping(prepareDeveloping(3.9 / 20), zStar, 0.71);
    expect(channelNusselt(channel, 1500, 0.71)).toBeCloseTo((onRoot * channel.hydraulic_m) / root_m, 10);
  });

  test('a long channel in full turbulence follows the turbulent law', () => {
    const long = prepareNusselt(3.9e-3, 20e-3, 2);
    const ratio = 2 / long.hydraulic_m;
    expect(channelNusselt(long, 1e4, 0.71)).toBeCloseTo(nusseltTurbulent(1e4, 0.71, ratio), 10);
  });

  test('half way through the transition of a long channel it is half way between', () => {
    const long = prepareNusselt(3.9e-3, 20e-3, 2);
    const mean = (channelNusselt(long, 2300, 0.71) + channelNusselt(long, 4000, 0.71)) / 2;
    expect(channelNusselt(long, 3150, 0.71)).toBeCloseTo(mean, 10);
  });

  test('still air has an answer', () => {
    const still = channelNusselt(channel, 0, 0.71);
    expect(still).toBeGreaterThan(3);
    expect(still).toBeLessThan(7.55);
  });

  test('a slot that gets ever narrower becomes a pair of plates, not more', () => {
    for (const aspect of [0.02, 0.01, 1e-3, 1e-5]) {
      const slot = prepareNusselt(aspect, 1, 1e3);
      const within = 0.03; // an aspect of 0.01 is not yet endless: exact 7.35
      expect(Math.abs(channelNusselt(slot, 1e-3, 0.71) / 7.541 - 1)).toBeLessThan(within);
    }
  });

  test('gap and height may be given either way round', () => {
    const turned = prepareNusselt(20e-3, 3.9e-3, 50e-3);
    expect(channelNusselt(turned, 900, 0.71)).toBe(channelNusselt(channel, 900, 0.71));
  });
});
