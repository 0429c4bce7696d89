import { describe, expect, test } from 'vitest';
import { toleranceLine, toleranceSentence } from '../../../../src/report/tolerance/toleranceSentence.ts';
import type { ToleranceResult } from '../../../../src/studies/tolerance/result.ts';

const result: ToleranceResult = {
  seed: 1,
  boxes: 1,
  draws: 1000,
  of: 1000,
  holds: { share: 0.97, low: 0.958, high: 0.979 },
  withSpare: 0.4,
  noAnswer: 0,
  failing: [{ limit: 'bond', count: 30 }],
  figures: [],
  margin: null,
  influences: [
    { of: { is: 'input', path: 'bond.filament_m' }, onMargin: 0.62, onHolding: 0.3, way: -0.8 },
    { of: { is: 'method', factor: 'channelHeat' }, onMargin: 0.1, onHolding: 0.1, way: 0.3 },
  ],
  influenceDraws: 1000,
  together: null,
  moved: 0,
  dimensions: 40,
  nominal: null,
  methods: ['channelHeat'],
  undrawn: [],
};
const say = (change: Partial<ToleranceResult>) =>
  toleranceSentence({ ...result, ...change }).replaceAll('\u202f', ' ');

describe('the sentence on parts that vary', () => {
  test('says how many boxes of a hundred hold, how sure that is, and what matters', () => {
    expect(say({})).toBe(
      '97 of 100 boxes built like this hold, 95.8 to 97.9 of 100 with 95 % confidence. What matters most is the thickness of the bond, 62 % of how the film’s margin varies; where one does not hold, the limit of the bond lines is passed first.',
    );
  });

  test('counts in thousands what would round to all or none', () => {
    expect(say({ holds: { share: 0.9987, low: 0.998, high: 0.9991 } })).toMatch(/^999 of 1000 boxes/);
    expect(say({ holds: { share: 0.004, low: 0.003, high: 0.006 } })).toMatch(/^4 of 1000 boxes/);
  });

  test('says of all, and of none, how far a draw can tell', () => {
    expect(say({ holds: { share: 1, low: 0.9963, high: 1 }, failing: [] })).toMatch(
      /^All 1000 boxes drawn hold: of 100 built like this at least 99\.63, with 95 % confidence\. What/,
    );
    expect(say({ holds: { share: 0, low: 0, high: 0.0037 } })).toMatch(
      /^None of the 1000 boxes drawn holds: of 100 built like this at most 0\.37, with 95 % confidence\./,
    );
  });

  test('says how often a whole batch holds, where there are enough of them', () => {
    const together = { boxes: 12, batches: 84, share: 0.81, low: 0.71, high: 0.88 };
    expect(say({ together })).toContain(
      'confidence; all twelve of a batch hold in 81 of 100 batches, 71.0 to 88.0 of 100. What',
    );
    expect(say({ together: { ...together, boxes: 2 } })).toContain('; both of a batch hold in');
    expect(say({ together: { ...together, boxes: 40 } })).toContain('; all 40 of a batch hold in');
    expect(say({ together: { ...together, batches: 4 } })).toContain('takes more boxes to say');
  });

  test('leaves out what hardly matters, and tells of boxes without an answer', () => {
    expect(say({ influences: [], failing: [] })).toMatch(/confidence\.$/);
    expect(say({ noAnswer: 0.02 })).toMatch(/2 of 100 have no answer and count as not holding\.$/);
  });

  test('names a method where that matters most', () => {
    expect(say({ influences: result.influences.slice(1) })).toContain(
      'is how well heat from fins to air is known, 10 %',
    );
  });

  test('says so where nothing varies or nothing is drawn yet', () => {
    expect(say({ dimensions: 0, holds: { share: 1, low: 0.99, high: 1 } })).toBe(
      'Nothing varies here: every box is the one as drawn, and holds.',
    );
    expect(say({ draws: 0 })).toBe('No box has been drawn yet.');
  });
});

describe('the line under the verdict', () => {
  const together = { boxes: 12, batches: 84, share: 0.81, low: 0.71, high: 0.88 };

  test('is short, and says when it is out of date', () => {
    expect(toleranceLine(result, true)).toBe('As parts vary, 97 of 100 boxes hold.');
    expect(toleranceLine({ ...result, together }, true)).toBe(
      'As parts vary, 97 of 100 boxes hold, all twelve in 81 of 100.',
    );
    expect(toleranceLine(result, false)).toBe('Out of date: 97 of 100 boxes held before the last change.');
  });

  test('is not there where there is nothing to say', () => {
    expect(toleranceLine({ ...result, draws: 0 }, true)).toBe('');
    expect(toleranceLine({ ...result, dimensions: 0 }, true)).toBe('');
  });
});
