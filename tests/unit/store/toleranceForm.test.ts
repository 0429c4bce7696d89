import { describe, expect, test } from 'vitest';
import { eightResistors } from '../../../src/model/examples/eightResistors.ts';
import { askedTolerance, firstToleranceForm } from '../../../src/store/toleranceForm.ts';

const design = { ...eightResistors, cutting: { ...eightResistors.cutting, boxes: 12 } };
const asked = (change: Partial<typeof firstToleranceForm>) =>
  askedTolerance({ ...firstToleranceForm, ...change }, design);

describe('what is asked about parts that vary', () => {
  test('begins with as many boxes as the design wants cut', () => {
    expect(asked({})).toEqual({
      seed: { text: '1', problem: null },
      boxes: { text: '12', problem: null },
      question: { design, draws: 10_000, seed: 1, boxes: 12, methods: true },
    });
  });

  test('is no question while something typed is not right', () => {
    expect(asked({ boxes: '' })).toMatchObject({
      boxes: { text: '', problem: 'Allowed is a whole number from 1 to 1000.' },
      question: null,
    });
    for (const seed of ['-1', '1.5', 'x', '4294967296']) expect(asked({ seed }).question, seed).toBeNull();
    expect(asked({ seed: ' 4294967295 ' }).question?.seed).toBe(4_294_967_295);
  });
});
