import { describe, expect, test } from 'vitest';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { deratingReport } from '../../../src/report/deratingReport.ts';
import type { LineChart } from '../../../src/report/lineChart.ts';
import type { DeratingReport } from '../../../src/report/types.ts';
import { exampleIds, sampleExample, sampleOf } from '../../helpers/sampleReport.ts';

const example = exampleById('eightResistors');
const plain = (text: string) => text.replaceAll('\u202f', ' ');
const pointsOf = (chart: LineChart, key: string) =>
  chart.lines.find((line) => line.key === key)?.points ?? [];
const wattsAt = (chart: LineChart, x: number, key = 'running') =>
  pointsOf(chart, key).find((point) => Math.abs(point.x - x) < 1e-9)?.y ?? Number.NaN;

function deratingOf(id: (typeof exampleIds)[number]): DeratingReport {
  const { derating } = sampleExample(id).report;
  if (!derating) throw new Error('the example has no answer');
  return derating;
}

describe.each(exampleIds)('the derating of %s', (id) => {
  const { design, report } = sampleExample(id);
  const { overAmbient, overAltitude, overSupply } = deratingOf(id);

  test('never lets more watts pass in a warmer room or in thinner air', () => {
    for (const chart of [overAmbient, overAltitude]) {
      for (const { points } of chart.lines) {
        points.slice(1).forEach(({ y }, i) => {
          expect(y).toBeLessThanOrEqual((points[i]?.y ?? Number.NaN) + 1e-6);
        });
      }
    }
  });

  test('marks the rating in the room of the design, on the line', () => {
    const [mark, ...more] = overAmbient.marks;
    expect(more).toEqual([]);
    expect(mark?.x).toBeCloseTo(design.room.T_K - 273.15, 9);
    expect(mark?.label).toBe(report.ratings?.total);
    expect(overAltitude.marks).toEqual([]);
  });

  test('keeps the box without fan below the one with', () => {
    for (const chart of [overAmbient, overAltitude])
      for (const { x, y } of pointsOf(chart, 'stopped')) expect(y).toBeLessThan(wattsAt(chart, x));
  });

  test('goes through the rating of the headline at the room and the altitude of the design', () => {
    const total = Number.parseFloat(report.ratings?.total ?? '');
    const rounding = total / 150; // the rating is printed with three digits
    expect(Math.abs(wattsAt(overAltitude, design.room.altitude_m) - total)).toBeLessThan(rounding);
    const room = design.room.T_K - 273.15;
    const [below, above] = [10 * Math.floor(room / 10), 10 * Math.ceil(room / 10)];
    expect(wattsAt(overAmbient, below)).toBeGreaterThan(total - rounding);
    expect(wattsAt(overAmbient, above)).toBeLessThan(total + rounding);
  });

  test('has the film of the answer between those at the supplies on either side', () => {
    const film = Number.parseFloat(report.figures.find(({ key }) => key === 'film')?.value ?? '');
    const points = pointsOf(overSupply, 'film');
    const after = points.findIndex(({ x }) => x >= design.fan.supply_V);
    expect(points[after - 1]?.y).toBeGreaterThan(film - 0.5); // printed in whole degrees
    expect(points[after]?.y).toBeLessThan(film + 0.5);
  });
});

test('the sentence says the mean fall over ten kelvin and what two kilometres of altitude leave', () => {
  const { sentence, overAmbient, overAltitude } = deratingOf('eightResistors');
  const [, fall, left] =
    /^Every 10.K more in the room cost about ([\d.]+) W of the rated load; thin air at 2000 m leaves ([\d.]+) % of it\.$/.exec(
      plain(sentence),
    ) ?? [];
  expect(Number(fall)).toBeCloseTo((wattsAt(overAmbient, 0) - wattsAt(overAmbient, 60)) / 6, 2);
  expect(Number(left)).toBeCloseTo((100 * wattsAt(overAltitude, 2000)) / wattsAt(overAltitude, 0), 1);
});

test('thin air costs a draught more than a fan, which moves the same volume all the same', () => {
  const { overAltitude } = deratingOf('eightResistors');
  const left = (key: string) => wattsAt(overAltitude, 4000, key) / wattsAt(overAltitude, 0, key);
  expect(left('stopped')).toBeLessThan(left('running'));
});

test('the film over the supply leaves a gap where the fan does not turn, and begins where it starts', () => {
  const design = { ...example, fan: { ...example.fan, start_V: 7.2 } };
  const { overSupply } = deratingReport(design, toCore(design), 'metric');
  const points = pointsOf(overSupply, 'film');
  expect(points.some(({ x }) => x < 7.2)).toBe(true);
  for (const { x, y } of points) expect(y === null).toBe(x < 7.2);
  expect(points.find(({ y }) => y !== null)?.x).toBe(7.2);
  expect(overSupply.spoken).toMatch(/at the lowest supply that turns the fan to/);
});

test('a supply above the rated one is still on the paper', () => {
  const design = { ...example, fan: { ...example.fan, supply_V: 15 } };
  const { overSupply } = deratingReport(design, toCore(design), 'metric');
  expect(pointsOf(overSupply, 'film').at(-1)?.x).toBe(15);
});

test('charts stand in the reader’s units: °F and feet for inches', () => {
  const { report } = sampleExample('onePair', 'inch');
  const { overAmbient, overAltitude, overSupply } = report.derating ?? deratingOf('onePair');
  expect([overAmbient.xUnit, overAltitude.xUnit, overSupply.yUnit]).toEqual(['°F', 'ft', '°F']);
  expect(pointsOf(overAmbient, 'running').map(({ x }) => Math.round(x))).toEqual([
    32, 50, 68, 86, 104, 122, 140,
  ]);
  expect(pointsOf(overAltitude, 'running').at(-1)?.x).toBeCloseTo(4000 / 0.3048, 6);
});

test('without a load there is nothing to derate: no sentence, no watts', () => {
  const off = example.positions.map((position) => ({ ...position, on: false }));
  const { derating } = sampleOf({ ...example, positions: off }).report;
  expect(derating?.sentence).toBe('');
  for (const line of derating?.overAmbient.lines ?? []) for (const { y } of line.points) expect(y).toBeNull();
});
