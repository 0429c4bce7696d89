import { describe, expect, test } from 'vitest';
import { readTracing } from '../../../../src/model/tracing/readTracing.ts';
import type { Tracing } from '../../../../src/model/tracing/tracing.ts';
import { inventedTracing } from '../../../helpers/inventedSheet.ts';

const good = [
  [0, 36],
  [20, 30],
  [40, 18],
  [55, 0],
] as const;
const read = (tracing: Tracing, list = 'fan.curve') => readTracing(tracing, list, 'metric');
const problems = (points: readonly (readonly [number, number])[], list?: string) =>
  read(inventedTracing(points), list).points.map(({ problem }) => problem);

describe('points of a curve', () => {
  test('have the values of their places, to the digit that a pixel is worth', () => {
    const { points } = read(inventedTracing(good, { turned_rad: 0.02 }));
    expect(points.map(({ texts }) => texts)).toEqual([
      ['0.00', '36.00'],
      ['20.00', '30.00'],
      ['40.00', '18.00'],
      ['55.00', '0.00'],
    ]);
    expect(points[1]?.flow_m3PerS).toBeCloseTo(20 / 3600, 12);
    expect(points.map(({ problem }) => problem)).toEqual([null, null, null, null]);
  });

  test('within a pixel and a half of a line of zero are on it, and not beyond', () => {
    const tracing = inventedTracing(good);
    const [first, ...rest] = tracing.points;
    const beside = (by: number) => ({
      ...tracing,
      points: [{ x: (first?.x ?? 0) - by, y: first?.y ?? 0 }, ...rest],
    });
    expect(read(beside(1.4)).points[0]).toMatchObject({ flow_m3PerS: 0, problem: null });
    expect(read(beside(3)).points[0]?.problem).toBe(
      'Flow is out of bounds. Allowed is 0 to 18\u202f000\u202fm³/h.',
    );
  });

  test('out of order are told, not put in order', () => {
    expect(problems([good[0], good[2], good[1], good[3]])).toEqual([
      null,
      null,
      expect.stringMatching(/^Flow must rise from row to row/),
      null,
    ]);
  });

  test('at one flow, without pressure at shut-off or not lowest at the end are told in the words of the fields', () => {
    expect(problems([good[0], good[1], [20, 20], good[3]])[2]).toMatch(/^This flow stands twice/);
    expect(problems([[0, 0], good[1], good[3]])[0]).toMatch(
      /^A fan curve begins with the pressure at shut-off/,
    );
    expect(problems([good[0], good[2], [50, 25]])[2]).toMatch(/^The curve must end with its lowest pressure/);
  });

  test('with a dip are right for a fan, and for a loss they are not', () => {
    const dip = [
      [0, 36],
      [10, 20],
      [20, 26],
      [50, 4],
    ] as const;
    expect(problems(dip)).toEqual([null, null, null, null]);
    expect(problems(dip, 'extras[0].points')[0]).toMatch(/^Without flow there is no loss/);
    expect(
      problems(
        [
          [0, 0],
          [20, 6],
          [40, 22],
        ],
        'extras[0].points',
      ),
    ).toEqual([null, null, null]);
  });
});

describe('marks', () => {
  const withText = (text: string, log = false): Tracing => {
    const tracing = inventedTracing(good);
    const { pressure } = tracing.axes;
    return {
      ...tracing,
      axes: {
        ...tracing.axes,
        pressure: { ...pressure, log, marks: [{ ...pressure.marks[0], text }, pressure.marks[1]] },
      },
    };
  };
  test.each([
    ['0,12 inH2O', true],
    ['3', true],
    ['3 m³/h', false],
    ['', false],
    ['50 kPa', false],
  ])('read “%s” as the fields do', (text, ok) => {
    expect(read(withText(text)).marks.pressure[0].ok).toBe(ok);
  });

  test('of a logarithmic axis are above zero', () => {
    expect(read(withText('0', true)).marks.pressure[0]).toEqual({
      ok: false,
      reason: 'A logarithmic axis has no zero: this must be more than nothing.',
    });
    expect(read(withText('0', true)).map).toBeNull();
  });

  test('that do not all stand give no values yet', () => {
    const { axes, points } = inventedTracing(good);
    const missing = { ...axes.flow, marks: [axes.flow.marks[0], { at: null, text: '60' }] as const };
    expect(read({ axes: { ...axes, flow: missing }, points }).points).toEqual([]);
  });
});
