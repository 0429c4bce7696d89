import { render, screen } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { ChartFrame } from '../../src/ui/charts/ChartFrame.tsx';
import { ladderRows } from '../../src/ui/charts/ladderRows.ts';
import { positionPoints } from '../../src/ui/charts/positionPoints.ts';
import { curveRows } from '../../src/ui/charts/rows.ts';
import { sampleExample } from '../helpers/sampleReport.ts';

const { report } = sampleExample('eightResistors');
const { air, heat } = report;
if (!air?.chart || !heat) throw new Error('the example has no answer');
const { chart } = air;

describe('rows for the charts', () => {
  test('carry every point of both curves, by rising flow', () => {
    const rows = curveRows(chart);
    expect(rows.filter((row) => row.fan !== null)).toHaveLength(chart.fan.length);
    expect(rows.filter((row) => row.box !== null)).toHaveLength(chart.system.length);
    for (const [i, row] of rows.entries())
      if (i > 0) expect(row.flow).toBeGreaterThan(rows[i - 1]?.flow ?? Number.NaN);
  });

  test('turn the ladder into spans that meet end to end', () => {
    const rows = ladderRows(heat.ladder);
    expect(rows).toHaveLength(heat.ladder.rungs.length - 1);
    rows.slice(1).forEach((row, i) => {
      expect(row.span[0]).toBeCloseTo(rows[i]?.span[1] ?? Number.NaN, 9);
    });
  });

  test('number the positions as people do, from one', () => {
    expect(positionPoints(heat).map((point) => point.number)).toEqual([
      '1',
      '2',
      '3',
      '4',
      '5',
      '6',
      '7',
      '8',
    ]);
  });
});

const never = new Promise<never>(() => {});

function Late(): never {
  throw never;
}

test('the frame keeps the chart’s place and caption while the chart is on its way', () => {
  render(
    <ChartFrame caption="Fan against box">
      <Late />
    </ChartFrame>,
  );
  expect(screen.getByRole('figure').textContent).toBe('Fan against box');
});
