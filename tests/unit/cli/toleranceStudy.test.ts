import { describe, expect, test } from 'vitest';
import { toleranceStudy } from '../../../src/cli/toleranceStudy.ts';
import { eightResistors } from '../../../src/model/examples/eightResistors.ts';

const ask = (options: Record<string, string>) => toleranceStudy.ask(eightResistors, options);

describe('parts that vary, asked on a terminal', () => {
  test('draws ten thousand boxes, as many together as the design wants cut, where nothing else is said', () => {
    expect(ask({})).toEqual({ design: eightResistors, draws: 10_000, seed: 1, boxes: 1, methods: true });
    expect(ask({ draws: '500', seed: '7', boxes: '12', methods: 'no' })).toMatchObject({
      draws: 500,
      seed: 7,
      boxes: 12,
      methods: false,
    });
  });

  test('says which option does not read', () => {
    expect(ask({ draws: '10' })).toBe('draws=: Allowed is a whole number from 100 to 200000.');
    expect(ask({ boxes: 'many' })).toMatch(/^boxes=: Allowed/);
    expect(ask({ methods: 'maybe' })).toBe('methods= is yes or no.');
  });
});
