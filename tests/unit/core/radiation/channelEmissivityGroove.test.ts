import { describe, expect, test } from 'vitest';
import { channelEmissivityGroove } from '../../../../src/core/radiation/channelEmissivityGroove.ts';
import { channelEmissivityQuick } from '../../../../src/core/radiation/channelEmissivityQuick.ts';

describe('channelEmissivityGroove', () => {
  test('a groove without depth is its base', () => {
    expect(channelEmissivityGroove(0.3, 0)).toBe(0.3);
  });

  test('a black groove is black: strings and strips close the balance', () => {
    expect(channelEmissivityGroove(1, 4, 60)).toBeCloseTo(1, 12);
  });

  test('walls that hardly radiate add up by area', () => {
    expect(channelEmissivityGroove(1e-6, 3, 60) / 7e-6).toBeCloseTo(1, 4);
  });

  test('deep walls radiate less than if they were evenly lit', () => {
    expect(channelEmissivityGroove(0.1, 10, 100)).toBeLessThan(channelEmissivityQuick(0.1, 10));
  });

  test('more strips change little', () => {
    const coarse = channelEmissivityGroove(0.1, 5, 120);
    expect(Math.abs(channelEmissivityGroove(0.1, 5, 240) / coarse - 1)).toBeLessThan(1e-3);
  });
});
