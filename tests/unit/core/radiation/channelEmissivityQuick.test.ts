import { describe, expect, test } from 'vitest';
import { channelEmissivityQuick } from '../../../../src/core/radiation/channelEmissivityQuick.ts';

describe('channelEmissivityQuick', () => {
  test('a channel without depth is its base', () => {
    expect(channelEmissivityQuick(0.3, 0)).toBeCloseTo(0.3, 12);
  });

  test('is the form written with areas', () => {
    expect(channelEmissivityQuick(0.3, 4)).toBeCloseTo(1 / (1 + (1 / 9) * (1 / 0.3 - 1)), 12);
  });
});
