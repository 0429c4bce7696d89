import { describe, expect, test } from 'vitest';
import { groupSound_dBA, type SoundSource } from '../../../../src/core/sound/groupSound_dBA.ts';

const fan: SoundSource = { sound_dBA: 35, soundAt_m: 1, speedRatio: 1, count: 1 };

describe('groupSound_dBA', () => {
  test('of one fan where its data sheet listens is what that says', () => {
    expect(groupSound_dBA([fan], 1)).toBeCloseTo(35, 12);
  });

  test('of ten alike is 10 dB more, given as one kind or one by one', () => {
    expect(groupSound_dBA([{ ...fan, count: 10 }], 1)).toBeCloseTo(45, 12);
    expect(groupSound_dBA(Array<SoundSource>(10).fill(fan), 1)).toBeCloseTo(45, 12);
  });

  test('falls with distance from where each was measured', () => {
    expect(groupSound_dBA([fan], 10)).toBeCloseTo(15, 12);
    expect(groupSound_dBA([{ ...fan, soundAt_m: 0.5 }], 5)).toBeCloseTo(15, 12);
  });

  test('falls by 15 dB at half the speed', () => {
    expect(groupSound_dBA([{ ...fan, speedRatio: 0.5 }], 1)).toBeCloseTo(35 - 15.05, 2);
  });

  test('takes in every kind, the loudest most', () => {
    const all = groupSound_dBA([fan, { ...fan, sound_dBA: 35 - 10 * Math.log10(2), count: 2 }], 1);
    expect(all).toBeCloseTo(35 + 10 * Math.log10(2), 12);
  });

  test('leaves out a fan that stands still, and is silence without any', () => {
    expect(groupSound_dBA([fan, { ...fan, speedRatio: 0 }], 1)).toBeCloseTo(35, 12);
    expect(groupSound_dBA([{ ...fan, speedRatio: 0 }], 1)).toBe(0);
    expect(groupSound_dBA([], 1)).toBe(0);
  });
});
