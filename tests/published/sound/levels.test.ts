import { describe, test } from 'vitest';
import { groupSound_dBA } from '../../../src/core/sound/groupSound_dBA.ts';
import { soundAtDistance_dBA } from '../../../src/core/sound/soundAtDistance_dBA.ts';
import { soundAtSpeed_dBA } from '../../../src/core/sound/soundAtSpeed_dBA.ts';
import { soundSum_dBA } from '../../../src/core/sound/soundSum_dBA.ts';
import { expectPublished } from '../../helpers/published.ts';

describe('a slower fan', () => {
  test.each([
    [12, 7, '-11.7', 'public hobby page on fan speed and noise'],
    [12, 9, '-6.25', 'public hobby page on fan speed and noise'],
    [12, 7, '-11.70', 'worked by hand'],
    [3000, 2000, '-8.805', 'worked by hand'],
  ])('from %d to %d changes by %s dB (%s)', (from, to, printed) => {
    expectPublished(soundAtSpeed_dBA(0, to / from), printed);
  });
});

describe('several fans', () => {
  test.each([
    [[86, 80], '87', 'public hobby page on fan speed and noise'],
    [[86, 80], '86.97', 'worked by hand'],
    [[30, 30], '33.01', 'worked by hand'],
    [[35, 35, 35, 35], '41.02', 'worked by hand'],
    [[40, 34], '40.973', 'worked by hand'],
  ])('of %j dB are %s dB together (%s)', (levels, printed) => {
    expectPublished(soundSum_dBA(levels), printed);
  });
});

describe('farther away', () => {
  test('from one metre to three it is 9.54 dB less (worked by hand)', () => {
    expectPublished(soundAtDistance_dBA(0, 1, 3), '-9.54');
  });
});

describe('the fans of a box', () => {
  test('two of 30 dB at 1 m and one of 34 dB at 0.5 m, 9 V instead of 12, are 23.780 dB at 3 m (worked by hand)', () => {
    const two = { sound_dBA: 30, soundAt_m: 1, speedRatio: 1, count: 2 };
    const slow = { sound_dBA: 34, soundAt_m: 0.5, speedRatio: 9 / 12, count: 1 };
    expectPublished(groupSound_dBA([two], 3), '23.468');
    expectPublished(groupSound_dBA([slow], 3), '12.190');
    expectPublished(groupSound_dBA([two, slow], 3), '23.780');
  });
});
