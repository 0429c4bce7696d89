import { describe, expect, test } from 'vitest';
import { ordinaryRun } from '../../../../src/core/system/input.ts';
import { type Design, designSchema } from '../../../../src/model/design.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { onePair } from '../../../../src/model/examples/onePair.ts';
import { twoDozen } from '../../../../src/model/examples/twoDozen.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { ratedLoad } from '../../../../src/studies/ratedLoad.ts';
import { sizeOne } from '../../../../src/studies/sizing/sizeOne.ts';
import { type SizerId, sizersOf } from '../../../../src/studies/sizing/sizers.ts';
import { type Sized, sizingJob } from '../../../../src/studies/sizing/sizing.ts';
import { standingOf } from '../../../../src/studies/sizing/standing.ts';
import type { Target } from '../../../../src/studies/sizing/target.ts';
import { withValues } from '../../../../src/studies/vary.ts';

const spare: Target = { ask: 'spare', spareFactor: 1.25 };
const tenKelvin: Target = { ask: 'everyLimit', margin_K: 10 };
const sizer = (design: Design, id: SizerId) => {
  const found = sizersOf(design).find((each) => each.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};
const size = (design: Design, id: SizerId, target: Target = tenKelvin) =>
  sizeOne(design, target, sizer(design, id));

describe('the question what size is needed', () => {
  const { now, sized } = runJob(sizingJob, { design: eightResistors, target: tenKelvin });
  const of = (id: SizerId) => sized.find((each) => each.id === id) as Sized;

  test('is answered for every measure the box has, and for the box as it is', () => {
    expect(sized.map(({ id }) => id)).toEqual(sizersOf(eightResistors).map(({ id }) => id));
    expect(now?.left_K).toBeGreaterThan(0);
  });

  test('tells what gives way right beyond', () => {
    for (const id of ['load', 'fanSupply', 'sideClearance', 'bond'] as const)
      expect(of(id).edge).toMatchObject({ state: 'found', beyond: { stop: { limit: { key: 'derating' } } } });
  });

  test('tells the sound at the lowest supply', () => {
    const { edge } = of('fanSupply');
    expect(edge.value).toBeLessThan(12);
    expect(edge.here.judged?.outputs.sound_dBA).toBeLessThan(now?.judged?.outputs.sound_dBA ?? 0);
  });

  test('leaves out what the box does not have', () => {
    const bare = {
      ...eightResistors,
      baffle: { ...eightResistors.baffle, fitted: false },
      inlet: { ...eightResistors.inlet, guard: { ...eightResistors.inlet.guard, kind: 'none' as const } },
    };
    const ids = sizersOf(bare).map(({ id }) => id);
    for (const id of ['clearance', 'slot', 'leak', 'guardDust', 'filterDust', 'pressure'])
      expect(ids).not.toContain(id);
  });

  test('puts only values into a design that its fields allow', () => {
    for (const design of [eightResistors, onePair, twoDozen]) {
      for (const each of sizersOf(design)) {
        for (const value of [each.low, each.high])
          expect(
            designSchema.safeParse(withValues(design, each.values(value))).success,
            `${each.id} ${value}`,
          ).toBe(true);
      }
    }
  });
});

describe('the largest load', () => {
  test.each([
    ['watts each', eightResistors],
    ['switched across the supply', twoDozen],
    ['amps through a string', onePair],
  ])('of %s with spare is the rated load', (_, design) => {
    const rated = ratedLoad(toCore(design), ordinaryRun);
    const { value } = size(design, 'load', spare);
    expect(Math.abs(value / (rated?.factor ?? 0) - 1)).toBeLessThan(5e-4);
  });

  test('in pulses, followed through them, leaves what is asked', () => {
    const pulsed = { ...eightResistors, load: { ...eightResistors.load, duty: 0.3, period_s: 20 } };
    const edge = size(pulsed, 'load');
    expect(edge).toMatchObject({ state: 'found', here: { stop: { limit: { key: 'pulse' } } } });
    const back = withValues(pulsed, sizer(pulsed, 'load').values(edge.value));
    expect(Math.abs(standingOf(back, tenKelvin).left_K ?? 9)).toBeLessThan(0.1);
  });
});

describe('a target that cannot be reached', () => {
  test('is answered with the best there is and the limit that stands in the way', () => {
    const edge = size(eightResistors, 'slot', { ask: 'everyLimit', margin_K: 30 });
    expect(edge).toMatchObject({ state: 'out', here: { stop: { why: 'limit' } } });
    expect(edge.here.left_K).toBeLessThan(0);
    const present = standingOf(eightResistors, { ask: 'everyLimit', margin_K: 30 });
    expect(edge.here.left_K).toBeGreaterThan(present.left_K ?? 0);
  });

  test('for want of an answer says why', () => {
    const stranded: Design = {
      ...onePair,
      sink: { ...onePair.sink, first: false },
      secondFace: { ...onePair.secondFace, way: 'free' },
    };
    expect(size(stranded, 'room')).toMatchObject({
      state: 'out',
      here: { left_K: null, stop: { why: 'noAnswer', unsolved: { reason: 'noHeatPath' } } },
    });
  });
});

test('the box itself can be what ends a measure', () => {
  expect(size(onePair, 'finLength')).toMatchObject({
    state: 'found',
    beyond: { stop: { why: 'clash', problem: { code: 'chipTooWide' } } },
  });
});

test('a supply that may sag is told so high that the fan still starts', () => {
  const sagging = {
    ...onePair,
    load: { ...onePair.load, atWorst: true },
    fan: { ...onePair.fan, supplySag: 0.2 },
  };
  const edge = size(sagging, 'fanSupply', { ask: 'film', margin_K: 0 });
  expect(edge.state).toBe('free');
  expect(edge.value * 0.8).toBeGreaterThanOrEqual(onePair.fan.start_V);
});

test('further fans are fed in proportion, and none above its rated voltage', () => {
  const { sideBySide, inARow, size_m, depth_m, inletSpace_m, supplySag, speedLoss, ...kind } =
    eightResistors.fan;
  const other = { ...kind, name: 'Second', place: 'beside' as const, supply_V: 10 };
  const two: Design = { ...eightResistors, fan: { ...eightResistors.fan, supply_V: 8 }, moreFans: [other] };
  const supply = sizer(two, 'fanSupply');
  expect(supply.high).toBeCloseTo(9.6, 9); // the second then has its 12 V
  expect(supply.values(6)).toEqual({ 'fan.supply_V': 6, 'moreFans[0].supply_V': 7.5 });
});
