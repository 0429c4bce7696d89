import { describe, expect, test } from 'vitest';
import { soundAtSpeed_dBA } from '../../../../src/core/sound/soundAtSpeed_dBA.ts';

describe('soundAtSpeed_dBA', () => {
  test('is the same at the same speed, and 15 dB more at twice it', () => {
    expect(soundAtSpeed_dBA(30, 1)).toBe(30);
    expect(soundAtSpeed_dBA(30, 2)).toBeCloseTo(45.05, 2);
  });
});
