import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import { twoDozen } from '../../../../src/model/examples/twoDozen.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { onBench } from '../../../../src/studies/bench/conditions.ts';
import { pairWith } from '../../../helpers/bench.ts';

const set = { load_W: 1.2, room_K: 294.15, fan_V: 9, time_s: null };
const input = toCore(pairWith({}));

describe('a box as it was run on the bench', () => {
  test('has the watts, the room and the volts of the reading, and nothing at its worst', () => {
    const worst = { ...input, load: { ...input.load, atWorst: true }, fan: { ...input.fan, supplySag: 0.1 } };
    const bench = onBench(worst, set);
    if (!bench) throw new Error('there is a load');
    const outcome = solveSystem(bench.input, bench.run);
    if (!outcome.ok) throw new Error(outcome.reason);
    expect(outcome.heat.total_W).toBeCloseTo(1.2, 12);
    expect(outcome.heat.room_K).toBe(294.15);
    expect(outcome.air.fanSpeedRatio).toBeCloseTo(0.75, 12);
  });

  test('watts keep their shares where resistors differ and some are off', () => {
    const bank = toCore(twoDozen);
    const bench = onBench(bank, { ...set, load_W: 20, fan_V: 12 });
    if (!bench) throw new Error('there is a load');
    const own = solveSystem(bank);
    const outcome = solveSystem(bench.input, bench.run);
    if (!outcome.ok || !own.ok) throw new Error('both have answers');
    expect(outcome.heat.total_W).toBeCloseTo(20, 10);
    const nominal_W = own.heat.positions.reduce((sum, position) => sum + position.nominal_W, 0);
    outcome.heat.positions.forEach(({ power_W, on }, r) => {
      const share = (own.heat.positions[r]?.nominal_W ?? 0) / nominal_W;
      expect(power_W / 20).toBeCloseTo(share, 10);
      if (!on) expect(power_W).toBe(0);
    });
  });

  test('below its start voltage the fan stands, and the box is without', () => {
    expect(onBench(input, { ...set, fan_V: 3 })?.run.fans).toBe('stopped');
    expect(onBench(input, { ...set, fan_V: 0 })?.run.fans).toBe('stopped');
    expect(onBench(input, set)?.run.fans).toBe('running');
  });

  test('fans of other kinds follow in proportion, also where the first is off in the design', () => {
    const other = { ...input.fan, name: 'behind', place: 'behind' as const, rated_V: 24, supply_V: 24 };
    const two = { ...input, fan: { ...input.fan, others: [other] } };
    expect(onBench(two, { ...set, fan_V: 6 })?.input.fan.others[0]?.supply_V).toBeCloseTo(12, 12);
    const off = { ...two, fan: { ...two.fan, supply_V: 0 } };
    expect(onBench(off, { ...set, fan_V: 6 })?.input.fan.others[0]?.supply_V).toBeCloseTo(12, 12);
  });

  test('watts in a box without any load are no state that it can be in; no watts are', () => {
    const idle = { ...input, load: { ...input.load, supply: 0 } };
    expect(onBench(idle, set)).toBeNull();
    expect(onBench(idle, { ...set, load_W: 0 })).not.toBeNull();
  });
});
