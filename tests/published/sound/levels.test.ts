import { describe, test } from 'vitest';
import { groupSound_dBA } from '../../../src/core/sound/groupSound_dBA.ts';
import { soundAtDistance_dBA } from '../../../src/core/sound/soundAtDistance_dBA.ts';
import { soundAtSpeed_dBA } from '../../../src/core/sound/soundAtSpeed_dBA.ts';
import { soundSum_dBA } from '../../../src/core/sound/soundSum_dBA.ts';
import type { SourceKey } from '../../../src/core/sources.ts';
import { published } from '../../helpers/published.ts';

const page = 'public hobby page on fan speed and noise';
const hand = 'worked by hand';
const from = (where: string, source: SourceKey, method: string) =>
  published({ source, where, kind: where === hand ? 'worked again' : 'handbook', methods: [method] });

describe('a slower fan', () => {
  test.each([
    [12, 7, '-11.7', page],
    [12, 9, '-6.25', page],
    [12, 7, '-11.70', hand],
    [3000, 2000, '-8.805', hand],
  ])('from %d to %d changes by %s dB (%s)', (fast, slow, printed, where) => {
    from(where, 'cpemmaFanLaws', 'soundAtSpeed').says(
      'change [dB]',
      soundAtSpeed_dBA(0, slow / fast),
      printed,
    );
  });
});

describe('several fans', () => {
  test.each([
    [[86, 80], '87', page],
    [[86, 80], '86.97', hand],
    [[30, 30], '33.01', hand],
    [[35, 35, 35, 35], '41.02', hand],
    [[40, 34], '40.973', hand],
  ])('of %j dB are %s dB together (%s)', (levels, printed, where) => {
    from(where, 'cpemmaFanLaws', 'soundSum').says('level [dB]', soundSum_dBA(levels), printed);
  });
});

describe('farther away', () => {
  test('from one metre to three it is 9.54 dB less (worked by hand)', () => {
    const distance = from(hand, 'commonPractice', 'soundAtDistance');
    distance.says('change [dB]', soundAtDistance_dBA(0, 1, 3), '-9.54');
  });
});

describe('the fans of a box', () => {
  test('two of 30 dB at 1 m and one of 34 dB at 0.5 m, 9 V instead of 12, are 23.780 dB at 3 m (worked by hand)', () => {
    const two = { sound_dBA: 30, soundAt_m: 1, speedRatio: 1, count: 2 };
    const slow = { sound_dBA: 34, soundAt_m: 0.5, speedRatio: 9 / 12, count: 1 };
    const group = from(hand, 'cpemmaFanLaws', 'soundSum');
    group.says('level of the two [dB]', groupSound_dBA([two], 3), '23.468');
    group.says('level of the slow one [dB]', groupSound_dBA([slow], 3), '12.190');
    group.says('level of all [dB]', groupSound_dBA([two, slow], 3), '23.780');
  });
});
