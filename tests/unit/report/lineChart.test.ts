import { describe, expect, test } from 'vitest';
import type { Design } from '../../../src/model/design.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import type { LineChart } from '../../../src/report/lineChart.ts';
import type { Report } from '../../../src/report/types.ts';
import { exampleIds, sampleExample, sampleOf } from '../../helpers/sampleReport.ts';

function chartsOf({ derating, fanStop, pulse }: Report): LineChart[] {
  return [
    derating?.overAmbient,
    derating?.overAltitude,
    derating?.overSupply,
    fanStop.chart ?? undefined,
    pulse?.chart,
  ].filter((chart) => chart !== undefined);
}

/** Every point, level and mark on the paper, every line from left to right. */
function expectDrawable({ lines, xTicks, yTicks, marks, levels }: LineChart) {
  const [left, right] = [xTicks[0] ?? Number.NaN, xTicks.at(-1) ?? Number.NaN];
  const [low, high] = [yTicks[0] ?? Number.NaN, yTicks.at(-1) ?? Number.NaN];
  expect(right).toBeGreaterThan(left);
  expect(high).toBeGreaterThan(low);
  const hair = 1e-9 * Math.max(Math.abs(high), Math.abs(right), 1);
  const expectWithin = (value: number, from: number, to: number) => {
    expect(value).toBeGreaterThanOrEqual(from - hair);
    expect(value).toBeLessThanOrEqual(to + hair);
  };
  for (const { points } of lines) {
    expect(points.length).toBeGreaterThan(1);
    points.slice(1).forEach(({ x }, i) => {
      expect(x).toBeGreaterThanOrEqual(points[i]?.x ?? Number.NaN);
    });
    for (const { x, y } of points) {
      expectWithin(x, left, right);
      if (y !== null) expectWithin(y, low, high);
    }
  }
  for (const { x, y } of marks) {
    expectWithin(x, left, right);
    expectWithin(y, low, high);
  }
  for (const { y } of levels) expectWithin(y, low, high);
}

function expectToldApart({ lines, spoken, caption, xUnit, yUnit }: LineChart) {
  expect(new Set(lines.map(({ style }) => style)).size).toBe(lines.length);
  expect(new Set(lines.map(({ label }) => label)).size).toBe(lines.length);
  expect(spoken).toMatch(/\d.*\.$/);
  for (const words of [caption, xUnit, yUnit]) expect(words).not.toBe('');
}

const pair = exampleById('onePair');
const eight = exampleById('eightResistors');
const pulsed = (duty: number, period_s: number): Design => ({
  ...pair,
  load: { ...pair.load, duty, period_s },
});

describe('every chart of lines', () => {
  test.each(exampleIds.flatMap((id) => [[id, 'metric'] as const, [id, 'inch'] as const]))(
    'of %s in %s stays on its paper, its lines told apart without colour',
    (id, system) => {
      const charts = chartsOf(sampleExample(id, system).report);
      expect(charts.map(({ id: chart }) => chart)).toEqual([
        'overAmbient',
        'overAltitude',
        'overSupply',
        'fanStop',
      ]);
      for (const chart of charts) {
        expectDrawable(chart);
        expectToldApart(chart);
      }
    },
  );

  test.each([
    ['slow pulses', pulsed(0.25, 8)],
    ['pulses of ten microseconds', pulsed(0.01, 1e-3)],
    ['pulses of minutes', pulsed(0.5, 1800)],
    ['a fan above its rated supply', { ...eight, fan: { ...eight.fan, supply_V: 15 } }],
    ['an adhesive for 200 °C', { ...eight, bond: { ...eight.bond, serviceLimit_K: 473.15 } }],
    ['a cold room high up', { ...eight, room: { ...eight.room, T_K: 243.15, altitude_m: 4000 } }],
  ])('with %s stays on its paper', (_, design) => {
    const charts = chartsOf(sampleOf(design).report);
    expect(charts.length).toBeGreaterThanOrEqual(4);
    for (const chart of charts) expectDrawable(chart);
  });
});
