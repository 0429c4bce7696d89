import { describe, expect, test } from 'vitest';
import { soundAtDistance_dBA } from '../../../../src/core/sound/soundAtDistance_dBA.ts';

describe('soundAtDistance_dBA', () => {
  test('falls by 6 dB for each doubling, and comes back', () => {
    expect(soundAtDistance_dBA(40, 1, 2)).toBeCloseTo(40 - 6.02, 2);
    expect(soundAtDistance_dBA(soundAtDistance_dBA(40, 1, 3), 3, 1)).toBeCloseTo(40, 12);
  });
});
