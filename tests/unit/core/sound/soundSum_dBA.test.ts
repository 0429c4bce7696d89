import { describe, expect, test } from 'vitest';
import { soundSum_dBA } from '../../../../src/core/sound/soundSum_dBA.ts';

describe('soundSum_dBA', () => {
  test('of one source is that source, however quiet', () => {
    expect(soundSum_dBA([35])).toBeCloseTo(35, 12);
    expect(soundSum_dBA([-5])).toBeCloseTo(-5, 12);
  });

  test('of ten alike is 10 dB more', () => {
    expect(soundSum_dBA(Array.from({ length: 10 }, () => 30))).toBeCloseTo(40, 12);
  });

  test('of none is silence', () => {
    expect(soundSum_dBA([])).toBe(0);
  });
});
