import { describe, expect, test } from 'vitest';
import { type KnownAxes, mapAxes } from '../../../../src/model/tracing/axisMap.ts';

const square: KnownAxes = {
  flow: {
    log: false,
    at: [
      { x: 100, y: 500 },
      { x: 500, y: 500 },
    ],
    values: [0, 0.02],
  },
  pressure: {
    log: false,
    at: [
      { x: 100, y: 500 },
      { x: 100, y: 100 },
    ],
    values: [0, 40],
  },
};

function mapOf(axes: KnownAxes) {
  const read = mapAxes(axes);
  if (!read.ok) throw new Error(read.fault.code);
  return read.map;
}
const faultOf = (axes: KnownAxes) => {
  const read = mapAxes(axes);
  return read.ok ? null : read.fault;
};

describe('axes square to the picture', () => {
  const map = mapOf(square);
  test('give a value at every place, and the place of every value', () => {
    expect(map.toReading({ x: 300, y: 300 })).toEqual({ flow_m3PerS: 0.01, dp_Pa: 20 });
    expect(map.toPlace({ flow_m3PerS: 0.005, dp_Pa: 30 })).toEqual({ x: 200, y: 200 });
  });

  test('say what a pixel is worth, and where each line lies on the other', () => {
    expect(map.onePixel({ x: 0, y: 0 }).flow_m3PerS).toBeCloseTo(0.02 / 400, 12);
    expect(map.onePixel({ x: 0, y: 0 }).dp_Pa).toBeCloseTo(0.1, 12);
    expect(map.crossing.flow).toBeCloseTo(0, 12);
    expect(map.turned_rad).toBe(0);
    expect(map.between_rad).toBeCloseTo(Math.PI / 2, 12);
  });
});

test('marks on other lines than that of zero are read all the same, and the lines are told', () => {
  const map = mapOf({
    flow: {
      log: false,
      at: [
        { x: 200, y: 400 },
        { x: 400, y: 400 },
      ],
      values: [0.005, 0.015],
    },
    pressure: {
      log: false,
      at: [
        { x: 150, y: 450 },
        { x: 150, y: 150 },
      ],
      values: [5, 35],
    },
  });
  expect(map.crossing.flow).toBeCloseTo(10, 9);
  expect(map.crossing.pressure).toBeCloseTo(0.0025, 12);
  expect(map.toReading({ x: 300, y: 300 }).flow_m3PerS).toBeCloseTo(0.01, 12);
  expect(map.toReading({ x: 300, y: 300 }).dp_Pa).toBeCloseTo(20, 9);
});

test('on a logarithmic axis halfway is the geometric mean, and a pixel is a share of the value', () => {
  const map = mapOf({ ...square, pressure: { ...square.pressure, log: true, values: [1, 100] } });
  expect(map.toReading({ x: 100, y: 300 }).dp_Pa).toBeCloseTo(10, 9);
  expect(map.onePixel({ x: 100, y: 300 }).dp_Pa).toBeCloseTo(10 * (100 ** (1 / 400) - 1), 9);
  expect(map.toPlace({ flow_m3PerS: 0, dp_Pa: 0 })).toBeNull();
});

describe('axes that make no scale are refused with the reason', () => {
  test('two marks on one spot', () => {
    expect(
      faultOf({
        ...square,
        flow: {
          ...square.flow,
          at: [
            { x: 100, y: 500 },
            { x: 103, y: 504 },
          ],
        },
      }),
    ).toEqual({ code: 'marksTogether', axis: 'flow', apart_px: 5 });
  });

  test('two marks of one value', () => {
    expect(faultOf({ ...square, pressure: { ...square.pressure, values: [30, 30] } })).toEqual({
      code: 'valuesEqual',
      axis: 'pressure',
    });
  });

  test('marks of both axes on one line', () => {
    expect(
      faultOf({
        ...square,
        pressure: {
          ...square.pressure,
          at: [
            { x: 100, y: 500 },
            { x: 500, y: 520 },
          ],
        },
      }),
    ).toMatchObject({ code: 'axesParallel' });
  });
});
