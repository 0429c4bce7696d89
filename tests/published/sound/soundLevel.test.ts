import { describe, test } from 'vitest';
import { soundAtDistance_dBA } from '../../../src/core/sound/soundAtDistance_dBA.ts';
import { soundAtSpeed_dBA } from '../../../src/core/sound/soundAtSpeed_dBA.ts';
import { soundSum_dBA } from '../../../src/core/sound/soundSum_dBA.ts';
import { expectPublished } from '../../helpers/published.ts';

// Public hobby page on fan speed and noise: fifty decibels a decade of speed; 12 V to 7 V and to 9 V are its own examples.
describe('a fan at less than full speed (public page on fan laws)', () => {
  test.each([
    [12, 7, '-11.7'],
    [12, 9, '-6.25'],
  ])('from %d to %d V changes by %s dB', (from, to, printed) => {
    expectPublished(soundAtSpeed_dBA(0, to / from), printed);
  });

  test('two sources of 86 and 80 dB are 87 dB on the same page', () => {
    expectPublished(soundSum_dBA([86, 80]), '87');
  });
});

// Worked by hand with tables of logarithms.
describe('sound levels worked by hand', () => {
  test('12 to 7 V: −11.70 dB', () => expectPublished(soundAtSpeed_dBA(0, 7 / 12), '-11.70'));
  test('3000 to 2000 1/min: −8.805 dB', () => expectPublished(soundAtSpeed_dBA(0, 2 / 3), '-8.805'));

  test.each([
    [[30, 30], '33.01'],
    [[35, 35, 35, 35], '41.02'],
    [[40, 34], '40.973'],
    [[86, 80], '86.97'],
  ])('%j dB together are %s dB', (levels, printed) => {
    expectPublished(soundSum_dBA(levels), printed);
  });

  test('1 to 3 m: −9.54 dB', () => expectPublished(soundAtDistance_dBA(0, 1, 3), '-9.54'));
});
