import { describe, expect, test } from 'vitest';
import { ordinaryRun, type SystemInput } from '../../../../src/core/system/input.ts';
import { settleNear } from '../../../../src/core/system/settleNear.ts';
import { settleSystem } from '../../../../src/core/system/solveSystem.ts';
import { prepareWork } from '../../../../src/core/system/work.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const base = sampleInput();
const near = settleSystem(base, ordinaryRun).work;

function from(input: SystemInput) {
  const work = prepareWork(input, ordinaryRun);
  return { settles: settleNear(work, near), work };
}

describe('settleNear', () => {
  test('finds the same design settled at once', () => {
    const { settles, work } = from(base);
    expect(settles).toBe(true);
    expect(work.iterations).toBeLessThanOrEqual(2);
    work.heat.network.rise_K.forEach((rise, node) => {
      expect(Math.abs(rise - (near.heat.network.rise_K[node] as number))).toBeLessThan(1e-8);
    });
  });

  test('leaves flows and temperatures of the neighbour as they are', () => {
    const flows = near.flow.massFlow.slice();
    const rises = near.heat.network.rise_K.slice();
    from({ ...base, room: { ...base.room, T_K: 310 } });
    expect(near.flow.massFlow).toEqual(flows);
    expect(near.heat.network.rise_K).toEqual(rises);
  });

  test('takes a room of another temperature along', () => {
    const { settles, work } = from({ ...base, room: { ...base.room, T_K: 303.15 } });
    expect(settles).toBe(true);
    expect(work.iterations).toBeLessThanOrEqual(4);
    expect(work.moved_K).toBeLessThan(1e-6);
  });

  test('does not try a bank of other parts, or another way of the air', () => {
    expect(from(sampleInput(7)).settles).toBe(false);
    expect(from({ ...base, hasFirstSink: false }).settles).toBe(false);
    expect(from({ ...base, baffle: null }).settles).toBe(false);
  });
});
