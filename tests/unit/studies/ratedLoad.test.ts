import { describe, expect, test } from 'vitest';
import { fansStopped, ordinaryRun, type Run, type SystemInput } from '../../../src/core/system/input.ts';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import { ratedLoad } from '../../../src/studies/ratedLoad.ts';
import { sampleInput } from '../../helpers/sampleInput.ts';

const base = sampleInput(4, 2);

/** Least factor that any limit leaves at this load, spare counted. */
function left(input: SystemInput, run: Run): number {
  const outcome = solveSystem(input, run);
  if (!outcome.ok) throw new Error(outcome.reason);
  const { spareFactor } = input.limits;
  const factors = outcome.limits.flatMap(({ loadFactor, quantity }) =>
    loadFactor === null ? [] : [quantity === 'temperature' ? loadFactor / spareFactor : loadFactor],
  );
  return Math.min(...factors);
}

describe.each([
  ['running', ordinaryRun],
  ['stopped', fansStopped],
] as const)('the rated load with fans %s', (_, run) => {
  test('put back as load leaves just the spare asked for', () => {
    for (const power_W of [0.05, 2, 20]) {
      const input = sampleInput(4, power_W);
      const rated = ratedLoad(input, run);
      if (!rated) throw new Error('it is bounded');
      const there = { ...input, load: { ...input.load, scale: rated.factor } };
      expect(Math.abs(left(there, run) - 1)).toBeLessThan(2e-3);
      expect(rated.total_W).toBeCloseTo(4 * power_W * rated.factor, 6);
    }
  });

  test('does not depend on the load it starts from', () => {
    const watts = [0.1, 1, 5].map((power_W) => ratedLoad(sampleInput(4, power_W), run)?.total_W ?? 0);
    for (const total of watts) expect(Math.abs(total / (watts[0] as number) - 1)).toBeLessThan(2e-3);
  });

  test('falls with the room, and is nil where the room is beyond a limit', () => {
    const at = (T_K: number) => ratedLoad({ ...base, room: { ...base.room, T_K } }, run)?.total_W ?? 0;
    expect(at(313.15)).toBeLessThan(at(293.15));
    expect(at(345)).toBe(0); // exhaust limit 343.15 K
  });
});

test('without fans it is less', () => {
  expect(ratedLoad(base, fansStopped)?.total_W).toBeLessThan(ratedLoad(base, ordinaryRun)?.total_W ?? 0);
});

test('pulses leave less than a steady load of the same mean', () => {
  const part = { ...base.positions[0]?.part, deratedBy: 'film', zeroPowerAt_K: 350 };
  const tender = {
    ...base,
    positions: base.positions.map((p) => ({ ...p, part: { ...p.part, ...part } })),
  } as SystemInput;
  const steady = ratedLoad(
    { ...tender, positions: tender.positions.map((p) => ({ ...p, power_W: 0.4 })) },
    ordinaryRun,
  );
  const pulsed = ratedLoad({ ...tender, load: { ...tender.load, duty: 0.2, period_s: 200 } }, ordinaryRun);
  expect(pulsed?.total_W).toBeLessThan(steady?.total_W ?? 0);
});
