import { describe, expect, test } from 'vitest';
import { histogramTable, marginChart } from '../../../../src/report/tolerance/histogramChart.ts';

const chart = marginChart(
  { edges: [-2, 0, 2, 4], holding: [0, 30, 60], failing: [10, 0, 0] },
  [{ label: '50 %', at_K: 2.5 }],
  'Spoken.',
  'metric',
);

describe('the histogram of the margin', () => {
  test('counts boxes of a hundred, those that hold apart, over axes at round numbers', () => {
    expect(chart.bins).toEqual([
      { from: -2, to: 0, holding: 0, failing: 10 },
      { from: 0, to: 2, holding: 30, failing: 0 },
      { from: 2, to: 4, holding: 60, failing: 0 },
    ]);
    expect(chart.xTicks).toEqual([-2, 0, 2, 4]);
    expect(chart.yTicks.at(-1)).toBe(60);
    expect(chart.marks).toEqual([{ label: '50 %', x: 2.5 }]);
  });

  test('is in the reader’s unit', () => {
    const inch = marginChart({ edges: [0, 5], holding: [1], failing: [0] }, [], '', 'inch');
    expect(inch).toMatchObject({ xUnit: '°F', bins: [{ from: 0, to: 9 }] });
  });

  test('has a table twin with every bin', () => {
    const { rows, amounts } = histogramTable(chart);
    expect(rows[0]).toEqual(['−2.0', '0.0', '0.0', '10.0']);
    expect(amounts[2]?.[2]).toEqual([{ value: 60, unit: '%' }]);
  });
});
