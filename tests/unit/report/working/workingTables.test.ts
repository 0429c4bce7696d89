import { expect, test } from 'vitest';
import { lastSteps, workingTables } from '../../../../src/report/working/workingTables.ts';
import { sampleWorking } from '../../../helpers/sampleWorking.ts';

test('the figures asked for come with all steps that lead to them, and no others', () => {
  const [figures, steps] = workingTables(sampleWorking, ['film:1', 'nowhere']);
  expect(figures?.rows).toEqual([['Film of resistor 1', '61 °C', '1, 3–4']]);
  expect(steps?.rows.map(([number]) => number)).toEqual(['1', '3', '4']);
});

test('a step prints its equation, the values put in, its range and whether the design is inside', () => {
  const [, steps] = workingTables(sampleWorking, ['share:fins']);
  expect(steps?.columns[2]?.typeset).toBe(true);
  expect(steps?.rows[1]).toEqual([
    '2',
    'Loss at the entry of the channels, sink 1',
    'K = 0.42·(1 − σ²); on the channel velocity\nK = 0.42·(1 − 0.61²) = 0.2637',
    'σ = 0.61, free share of the area',
    '0.264',
    'free share 0.7 to 1 (textbook)\nfree share 0.61, outside',
    '1',
  ]);
});

test('nothing asked for is nothing printed', () => {
  expect(workingTables(sampleWorking, [])).toEqual([]);
});

test('each figure has the step that gives it', () => {
  expect(lastSteps(sampleWorking)).toEqual(
    new Map([
      ['film:1', 4],
      ['share:fins', 2],
      ['flow', 1],
    ]),
  );
});
