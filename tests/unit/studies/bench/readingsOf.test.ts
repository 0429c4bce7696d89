import { expect, test } from 'vitest';
import { onePair } from '../../../../src/model/examples/onePair.ts';
import { getAt } from '../../../../src/model/path.ts';
import { readingsOf, tellsOfBox, tellsOfUnknowns } from '../../../../src/studies/bench/readingsOf.ts';
import { oneReadingEach } from '../../../helpers/readings.ts';

const design = { ...onePair, readings: oneReadingEach };

test('all readings stand in one list, each with its place in the design', () => {
  const readings = readingsOf(design);
  expect(readings.map(({ kind }) => kind)).toEqual(['temperature', 'pressure', 'flow', 'voltage', 'sound']);
  expect(readings.map(({ index }) => index)).toEqual([0, 1, 2, 3, 4]);
  for (const { path, load_W } of readings) expect(getAt(design, `${path}.load_W`)).toBe(load_W);
  expect(readings[0]).toMatchObject({ where: 'onSink', number: 2, value: 321.15, within: 1.5, time_s: null });
  expect(readings[3]).toMatchObject({ where: null, value: 11.8, within: 0.1 });
});

test('a reading before the box has settled keeps its moment', () => {
  const temperatures = oneReadingEach.temperatures.map((row) => ({ ...row, settled: false }));
  const [first] = readingsOf({ ...design, readings: { ...oneReadingEach, temperatures } });
  expect(first?.time_s).toBe(1800);
});

test('volts at the fan tell nothing of the box, and its sound nothing of any unknown', () => {
  const readings = readingsOf(design);
  expect(readings.filter((each) => !tellsOfBox(each)).map(({ kind }) => kind)).toEqual(['voltage']);
  expect(readings.filter((each) => !tellsOfUnknowns(each)).map(({ kind }) => kind)).toEqual([
    'voltage',
    'sound',
  ]);
});
