import { describe, expect, test } from 'vitest';
import {
  soundAtDistance_dBA,
  soundAtSpeed_dBA,
  soundSum_dBA,
} from '../../../../src/core/sound/soundLevel.ts';

describe('soundAtSpeed_dBA', () => {
  test('adds fifty decibels for ten times the speed, and nothing for the same', () => {
    expect(soundAtSpeed_dBA(20, 10)).toBeCloseTo(70, 12);
    expect(soundAtSpeed_dBA(20, 1)).toBe(20);
  });
});

describe('soundSum_dBA', () => {
  test('adds three decibels for a second equal source and ten for nine more', () => {
    expect(soundSum_dBA([40, 40])).toBeCloseTo(40 + 10 * Math.log10(2), 12);
    expect(soundSum_dBA(Array(10).fill(30))).toBeCloseTo(40, 12);
  });

  test('of one source is that source', () => {
    expect(soundSum_dBA([33])).toBeCloseTo(33, 12);
  });

  test('of nothing is silence', () => {
    expect(soundSum_dBA([])).toBe(0);
  });
});

describe('soundAtDistance_dBA', () => {
  test('loses twenty decibels to ten times the distance', () => {
    expect(soundAtDistance_dBA(50, 1, 10)).toBeCloseTo(30, 12);
    expect(soundAtDistance_dBA(30, 10, 1)).toBeCloseTo(50, 12);
  });
});
