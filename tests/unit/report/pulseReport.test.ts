import { describe, expect, test } from 'vitest';
import type { PulseOutcome } from '../../../src/core/system/outcome.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { pulseReport } from '../../../src/report/pulseReport.ts';
import type { UnitSystem } from '../../../src/report/types.ts';
import { sampleExample, sampleOf } from '../../helpers/sampleReport.ts';

const example = exampleById('eightResistors');
const [part] = example.parts;
if (!part) throw new Error('the example has no part');
const design = {
  ...example,
  parts: [part, { ...part, zeroPowerAt_K: 403.15 }],
  positions: example.positions.map((position, r) => ({ ...position, part: r === 2 ? 1 : 0 })),
};
/** From 50 °C up to 90 °C within a quarter of the period, then back. */
const pulse: PulseOutcome = {
  period_s: 8,
  on_s: 2,
  position: 2,
  peak_K: 363.15,
  valley_K: 323.15,
  single_K: 343.15,
  beyond_K: 0,
  trace: [
    { time_s: 0, film_K: 323.15 },
    { time_s: 2, film_K: 363.15 },
    { time_s: 8, film_K: 323.15 },
  ],
  cycles: 3,
};
const plain = (text: string) => text.replaceAll('\u202f', ' ');
const reportOf = (change: Partial<PulseOutcome> = {}, system: UnitSystem = 'metric') =>
  pulseReport(design, { ...pulse, ...change }, system);

describe('a load in pulses', () => {
  test('is told with its rhythm, its swing, and what one pulse does to a cold box', () => {
    expect(plain(reportOf().sentence)).toBe(
      'On for 2.0 s of every 8.0 s, the film of resistor 3 swings between 50 °C and 90 °C once it has settled; one pulse into the cold box takes it to 70 °C.',
    );
    expect(plain(reportOf({}, 'inch').sentence)).toMatch(/between 122 °F and 194 °F .* 158 °F\.$/);
  });

  test('shows tenths where whole degrees would hide the swing', () => {
    expect(plain(reportOf({ valley_K: 361.95 }).sentence)).toContain('between 88.8 °C and 90.0 °C');
  });

  test.each([
    [20e-6, 'µs', 20],
    [0.04, 'ms', 40],
    [8, 's', 8],
    [1200, 'min', 20],
  ])('every %d s is drawn in %s', (period_s, unit, wide) => {
    const trace = pulse.trace.map(({ time_s, film_K }) => ({ time_s: (time_s * period_s) / 8, film_K }));
    const { chart } = reportOf({ period_s, on_s: period_s / 4, trace });
    expect(chart.xUnit).toBe(unit);
    expect(chart.lines[0]?.points.at(-1)?.x).toBeCloseTo(wide, 9);
    expect(chart.xTicks.at(-1)).toBeGreaterThanOrEqual(wide);
    expect(chart.marks[0]?.x).toBeCloseTo(wide / 4, 9);
  });

  test('is marked at its peak, where the load goes off', () => {
    const { chart } = reportOf();
    expect(chart.marks).toEqual([{ label: '90\u202f°C', x: 2, y: 90 }]);
    expect(chart.lines[0]?.points.find(({ x }) => x === 2)?.y).toBe(90);
  });

  test('shows the limit of that resistor’s own part, where the film comes near it', () => {
    expect(reportOf().chart.levels).toEqual([{ label: 'film limit', y: 130, style: 'solid' }]);
    expect(reportOf().chart.yTicks.at(-1)).toBeGreaterThanOrEqual(130);
    expect(reportOf({ valley_K: 353.15 }).chart.levels).toEqual([]);
    expect(reportOf({ position: 0, peak_K: 343.15 }).chart.levels).toEqual([]);
  });
});

test('a design whose load comes and goes has the report, and its peak among the limits; one that stays on has not', () => {
  const { design: pair, report: steady } = sampleExample('onePair');
  expect(steady.pulse).toBeNull();
  expect(steady.limits.map(({ key }) => key)).not.toContain('pulse');
  const { report } = sampleOf({ ...pair, load: { ...pair.load, duty: 0.25, period_s: 8 } });
  expect(plain(report.pulse?.sentence ?? '')).toMatch(/^On for 2\.0 s of every 8\.0 s, /);
  const limit = report.limits.find(({ key }) => key === 'pulse');
  expect(report.pulse?.chart.marks[0]?.label).toBe(limit?.value);
});
