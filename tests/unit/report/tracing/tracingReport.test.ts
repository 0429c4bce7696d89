import { describe, expect, test } from 'vitest';
import { emptyTracing } from '../../../../src/model/tracing/tracing.ts';
import { buildTracingReport, unitChoices } from '../../../../src/report/tracing/tracingReport.ts';
import { inventedTracing } from '../../../helpers/inventedSheet.ts';

const sheet = { name: 'sheet.png', width: 900, height: 600 };
const good = [
  [0, 36],
  [20, 30],
  [40, 18],
  [55, 0],
] as const;
const report = (...[points, scales]: Parameters<typeof inventedTracing>) =>
  buildTracingReport(inventedTracing(points, scales), sheet, 'fan.curve', 'metric');
const sentenceOf = ({ steps }: ReturnType<typeof report>, id: string) =>
  steps.find((step) => step.id === id)?.sentence;

describe('the five steps', () => {
  test('begin with a picture, and say at each what to do now', () => {
    const { steps } = buildTracingReport(emptyTracing('metric'), null, 'fan.curve', 'metric');
    expect(steps.map(({ title, isDone }) => [title, isDone])).toEqual([
      ['Picture', false],
      ['Flow axis', false],
      ['Pressure axis', false],
      ['Points', false],
      ['Take it over', false],
    ]);
    expect(steps[0]?.sentence).toMatch(/^Choose the picture of a data sheet, drop it here, or paste it/);
    expect(steps[1]?.sentence).toMatch(/^Press a place on the line that the flow is printed along/);
  });

  test('are done when both axes stand and the points are right', () => {
    const all = report(good);
    expect(all.steps.map(({ isDone }) => isDone)).toEqual([true, true, true, true, false]);
    expect(sentenceOf(all, 'take')).toMatch(/^4 points become the fan’s curve, in place of those/);
    expect(all.rows).toEqual([
      ['0', '36'],
      ['20', '30'],
      ['40', '18'],
      ['55', '0'],
    ]);
  });

  test('do not lead on while a point is wrong; it is told beside, and nothing is put right', () => {
    const wrong = report([good[0], good[2], good[1], good[3]]);
    expect(wrong.rows).toBeNull();
    expect(wrong.isOutOfOrder).toBe(true);
    expect(wrong.curve).toEqual([]);
    expect(sentenceOf(wrong, 'take')).toBe('One point is not right yet; what is wrong stands beside.');
    expect(wrong.points[2]?.problem).toMatch(/^Flow must rise from row to row/);
  });
});

describe('what is told of the scales', () => {
  test('is what a pixel is worth, where the axes lie, and how the sheet is turned', () => {
    expect(report(good, { turned_rad: 0.03 }).scales).toEqual([
      'One pixel is 0.1 m³/h and 0.1 Pa.',
      'By the marks the flow axis lies at 0 Pa, the pressure axis lies at 0 m³/h.',
      'The sheet lies turned by 1.7°, and is read so.',
    ]);
  });

  test('of a logarithmic axis is a share of the value', () => {
    expect(
      report(
        [
          [0, 36],
          [40, 4],
        ],
        { logPressure: true },
      ).scales[0],
    ).toBe('One pixel is 0.1 m³/h and 1.2 % of the pressure.');
  });

  test('where they make none is the reason', () => {
    const { axes, points } = inventedTracing(good);
    const [first, second] = axes.flow.marks;
    const flat = { ...axes, flow: { ...axes.flow, marks: [first, { ...second, text: '10' }] as const } };
    const told = buildTracingReport({ axes: flat, points }, sheet, 'fan.curve', 'metric');
    expect(told.fault).toBe(
      'Both marks of the flow axis have the same flow. Two printed values that differ make a scale.',
    );
    expect(told.points[0]?.label).toBe('Point 1: no values before both axes stand');
  });

  test('that stand far from square is asked about', () => {
    const { axes, points } = inventedTracing(good);
    const [first, second] = axes.pressure.marks;
    const leaning = { ...second, at: { x: (second.at?.x ?? 0) + 80, y: second.at?.y ?? 0 } };
    const skew = { ...axes, pressure: { ...axes.pressure, marks: [first, leaning] as const } };
    expect(buildTracingReport({ axes: skew, points }, sheet, 'fan.curve', 'metric').scales.at(-1)).toBe(
      'Its axes stand at 79° to each other, not square: true of a sheet pulled skew, or a mark is beside its line.',
    );
  });
});

test('marks and points have names that say their values', () => {
  const { marks, points, sayPlace } = report(good);
  expect(marks.flow.map(({ label }) => label)).toEqual(['Flow mark 1: 10 m³/h', 'Flow mark 2: 60 m³/h']);
  expect(points[2]?.label).toBe('Point 3: 40.00 m³/h, 18.00 Pa');
  expect(sayPlace({ x: 50, y: 500 })).toBe('−5.00 m³/h, 0.00 Pa');
});

test('a dip and an end above zero are told and stay', () => {
  const { remarks, rows } = report([
    [0, 36],
    [10, 20],
    [20, 26],
    [50, 4],
  ]);
  expect(remarks).toEqual([
    'From point 2 to point 3 the pressure rises with the flow, from 20.00 to 26.00 Pa: a dip, as many fans have. It stays.',
    'The last point still has 4.00 Pa; from there the curve is carried on to zero pressure.',
  ]);
  expect(rows).toHaveLength(4);
});

test('the units of both axes may be chosen', () => {
  expect(unitChoices('flow').map(({ label }) => label)).toContain('cfm');
  expect(unitChoices('pressure').map(({ label }) => label)).toContain('inH₂O');
});
