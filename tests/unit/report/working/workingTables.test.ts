import { expect, test } from 'vitest';
import type { WorkingStep } from '../../../../src/report/working/types.ts';
import { lastSteps, workingTables } from '../../../../src/report/working/workingTables.ts';
import { sampleWorking } from '../../../helpers/sampleWorking.ts';

test('the figures asked for come with all steps that lead to them, and no others', () => {
  const [figures, steps] = workingTables(sampleWorking, ['film:1', 'nowhere']);
  expect(figures?.rows).toEqual([['Film of resistor 1', '61 °C', '1–3']]);
  expect(steps?.rows.map(([number]) => number)).toEqual(['1', '2', '3']);
});

test('a step prints its equation, the values put in, and where the design has left its range', () => {
  const [, steps] = workingTables(sampleWorking, ['share:fins']);
  expect(steps?.columns[2]?.typeset).toBe(true);
  expect(steps?.rows[1]).toEqual([
    '2',
    'Loss at the entry of the channels, sink 1, outside its range: free share 0.61',
    'K = 0.42·(1 − σ²); on the channel velocity\nK = 0.42·(1 − 0.61²) = 0.2637',
    'σ = 0.61, free share of the area',
    '0.264',
    '1',
  ]);
});

test('nothing asked for is nothing printed', () => {
  expect(workingTables(sampleWorking, [])).toEqual([]);
});

test('each figure has the number that its last step has on paper', () => {
  expect([...lastSteps(sampleWorking, ['film:1', 'flow'])]).toEqual([
    ['film:1', 3],
    ['flow', 1],
  ]);
});

test('a figure of very many steps has its last three on paper, and says how many more there are', () => {
  const [first] = sampleWorking.steps;
  const steps = Array.from({ length: 120 }, (_, i) => ({ ...first, number: i + 1 }) as WorkingStep);
  const long = {
    id: 'exhaust',
    title: 'Exhaust air',
    value: '45 °C',
    steps: steps.map(({ number }) => number),
  };
  const [figures, printed] = workingTables({ sentence: '', figures: [long], steps }, ['exhaust']);
  expect(figures?.rows).toEqual([['Exhaust air', '45 °C', '1–3; 117 more on the screen']]);
  expect(printed?.rows).toHaveLength(3);
});
