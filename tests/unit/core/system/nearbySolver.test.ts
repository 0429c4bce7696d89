import { describe, expect, test } from 'vitest';
import { fansStopped, ordinaryRun, type SystemInput } from '../../../../src/core/system/input.ts';
import { nearbySolver } from '../../../../src/core/system/nearbySolver.ts';
import type { Outcome, Solved } from '../../../../src/core/system/outcome.ts';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { dippingFan, withFan } from '../../../helpers/solved.ts';

const base = sampleInput();
const near = nearbySolver(base);

const withSide = (sideClearance_m: number, input = base): SystemInput => ({
  ...input,
  baffle: input.baffle && { ...input.baffle, sideClearance_m },
});
const withFilter: SystemInput = {
  ...base,
  inlet: { ...base.inlet, filter: { linear_PaSPerM: 2, quadratic_PaS2PerM2: 0.5, blocked: 0 } },
};
const withLoss = (loss: number, input: SystemInput): SystemInput => ({
  ...input,
  extras: [{ name: 'mesh', place: 'inlet', loss, area_m2: 1.5e-3, points: [] }],
});

function answer(outcome: Outcome): Solved {
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

function expectSame(quick: Outcome, full: Outcome) {
  const [a, b] = [answer(quick), answer(full)];
  a.heat.positions.forEach(({ film_K }, r) => {
    expect(Math.abs(film_K - (b.heat.positions[r]?.film_K ?? 0))).toBeLessThan(1e-6);
  });
  expect(Math.abs(a.air.flow_m3PerS / b.air.flow_m3PerS - 1)).toBeLessThan(1e-9);
  expect(a.limits.map(({ key, state }) => [key, state])).toEqual(
    b.limits.map(({ key, state }) => [key, state]),
  );
}

describe('a neighbour', () => {
  test('has the answer of the full way, told in the same way, in fewer rounds', () => {
    const other = withSide(0.9e-3);
    const [quick, full] = [near(other), solveSystem(other)];
    expectSame(quick, full);
    expect(Object.keys(quick)).toEqual(Object.keys(full));
    expect(answer(quick).balance.iterations).toBeLessThan(answer(full).balance.iterations);
  });

  test('may be the design itself', () => {
    expectSame(near(base), solveSystem(base));
  });

  test('is answered the same to the last bit, whatever was asked before', () => {
    const others = [0.5e-3, 0.9e-3, 1.2e-3, 0.7e-3].map((gap) => withSide(gap));
    const forward = others.map(near);
    const backward = others.toReversed().map(nearbySolver(base)).toReversed();
    expect(backward).toEqual(forward);
  });

  test('may have chips of unlike thickness, whose slits are other links of the air', () => {
    const positions = base.positions.map((position, r) => ({
      ...position,
      part: { ...position.part, thickness_m: position.part.thickness_m * (1 + 0.02 * (r % 3)) },
    }));
    const other = { ...base, positions };
    expectSame(near(other), solveSystem(other));
    expect(answer(near(other)).balance.iterations).toBeLessThan(5);
    expectSame(nearbySolver(other)(base), solveSystem(base));
  });

  test('keeps its pulses', () => {
    const pulsed = { ...base, load: { ...base.load, duty: 0.5, period_s: 0.02 } };
    const [quick, full] = [
      nearbySolver(pulsed)(withSide(0.9e-3, pulsed)),
      solveSystem(withSide(0.9e-3, pulsed)),
    ];
    expect(answer(quick).pulse?.peak_K).toBeCloseTo(answer(full).pulse?.peak_K ?? 0, 5);
  });

  test('is found with its fans stopped too', () => {
    const other = { ...base, room: { ...base.room, T_K: base.room.T_K + 2 } };
    const [quick, full] = [nearbySolver(base, fansStopped)(other), solveSystem(other, fansStopped)];
    expect(answer(quick).heat.positions[3]?.film_K).toBeCloseTo(
      answer(full).heat.positions[3]?.film_K ?? 0,
      4,
    );
  });
});

describe('what is no neighbour goes the full way', () => {
  test.each([
    ['another number of resistors', sampleInput(5)],
    ['a filter that was not there', withFilter],
    ['a load a hundred times as large', sampleInput(8, 300)],
  ] satisfies [string, SystemInput][])('%s', (_, other) => {
    expect(near(other)).toEqual(solveSystem(other));
  });

  test('a box that meets its dipping fan only at the lower flow', () => {
    const dipping = withLoss(0.01, withFan(base, dippingFan));
    const quick = nearbySolver(dipping);
    expectSame(quick(withLoss(0.02, dipping)), solveSystem(withLoss(0.02, dipping)));
    const tight = withLoss(12, dipping);
    const full = answer(solveSystem(tight));
    expect(full.air.flow_m3PerS).toBeLessThan(18.4 / 3600); // left of the dip
    expectSame(quick(tight), full);
  });

  test('one without an answer has its reason', () => {
    const still = { ...base, fan: { ...base.fan, supply_V: 4.9 } };
    expect(near(still)).toEqual(solveSystem(still));
    const cut: SystemInput = {
      ...base,
      hasFirstSink: false,
      secondFace: { ...base.secondFace, way: 'free' },
    };
    expect(near(cut)).toMatchObject({ ok: false, reason: 'noHeatPath' });
  });

  test('and so do all, where the design in the middle has no answer', () => {
    const still = { ...base, fan: { ...base.fan, supply_V: 4.9 } };
    expect(nearbySolver(still, ordinaryRun)(base)).toEqual(solveSystem(base));
  });
});
