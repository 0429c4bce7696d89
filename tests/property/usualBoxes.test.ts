import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fansStopped,
  leastFlow,
  ordinaryRun,
  type Run,
  type SystemInput,
} from '../../src/core/system/input.ts';
import type { Solved } from '../../src/core/system/outcome.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { toCore } from '../../src/model/toCore.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';

/** Rounds stop at a ten-millionth of a kelvin without fans; a change that moves nothing may look like less than that. */
const rounding_K = 1e-5;

/** Random boxes as a workshop would build them; a change that leaves a box without an answer says nothing. */
function everyBox(numRuns: number, law: (input: SystemInput) => void): void {
  fc.assert(
    fc.property(arbitraryDesign('usual'), (design) => law(toCore(design))),
    { seed: 20261125, numRuns },
  );
}

function answer(input: SystemInput, run: Run): Solved | null {
  const outcome = solveSystem(input, { ...run, pulses: false });
  return outcome.ok ? outcome : null;
}

const hottest = ({ heat }: Solved) => heat.positions[heat.hottest]?.film_K ?? Number.NaN;
const scaled = (input: SystemInput, by: number): SystemInput => ({
  ...input,
  load: { ...input.load, scale: input.load.scale * by },
});
const tilted = (input: SystemInput, tilt_rad: number): SystemInput => ({
  ...input,
  box: { ...input.box, tilt_rad },
});

const worse: readonly (readonly [string, (input: SystemInput) => SystemInput])[] = [
  ['more watts', (input) => scaled(input, 1.2)],
  [
    'surfaces that radiate half as much',
    (input) => ({ ...input, factors: { ...input.factors, emissivity: 0.5 } }),
  ],
  [
    'fans that stand more in the way',
    (input) => ({ ...input, factors: { ...input.factors, standingFan: 3 } }),
  ],
  ['stiller air outside', (input) => ({ ...input, factors: { ...input.factors, outsideHeat: 0.5 } })],
  [
    'a guard that dust has half closed',
    ({ inlet, ...input }) => ({
      ...input,
      inlet: { ...inlet, guard: { ...inlet.guard, blocked: 0.5 + 0.5 * inlet.guard.blocked } },
    }),
  ],
];

describe('any usual box without fans', () => {
  test.each(worse)('is never cooler for %s', (_, change) => {
    let compared = 0;
    everyBox(300, (input) => {
      const [before, after] = [answer(input, fansStopped), answer(change(input), fansStopped)];
      if (!before || !after) return;
      compared++;
      expect(hottest(after)).toBeGreaterThan(hottest(before) - rounding_K);
    });
    expect(compared).toBeGreaterThan(200); // the rest has a resistor without any sink
  });

  test('is never cooler for leaning more, from upright to flat, and flat has no draught', () => {
    everyBox(150, (input) => {
      let before_K = 0;
      for (const degrees of [0, 30, 60, 80, 90]) {
        const now = answer(tilted(input, (degrees * Math.PI) / 180), fansStopped);
        if (!now) return;
        expect(hottest(now)).toBeGreaterThan(before_K - rounding_K);
        before_K = hottest(now);
        if (degrees === 90) expect(now.air.flow_m3PerS).toBe(0);
      }
    });
  });

  test('has nothing colder than the room, and no wall or exhaust hotter than its hottest film', () => {
    everyBox(400, (input) => {
      const found = answer(input, fansStopped);
      if (!found) return;
      const { heat } = found;
      const [least_K, most_K] = [heat.room_K - rounding_K, hottest(found) + rounding_K];
      const temperatures = [
        heat.exhaust_K,
        ...heat.positions.flatMap(({ film_K, body_K, joint_K }) => [film_K, body_K, joint_K]),
        ...heat.sinks.flatMap((sink) =>
          sink
            ? [sink.before_K ?? heat.room_K, sink.after_K ?? heat.room_K, sink.facing_K, sink.outside_K]
            : [],
        ),
      ];
      for (const T_K of temperatures) {
        expect(T_K).toBeGreaterThanOrEqual(least_K);
        expect(T_K).toBeLessThanOrEqual(most_K);
      }
    });
  });

  test('lets its flow go to nothing with the watts, half of them never less than nine twentieths of it', () => {
    everyBox(60, (input) => {
      // From a trifle on, where warmth is in proportion to the watts and air no thicker for it.
      const first = answer(input, fansStopped);
      if (!first || first.air.flow_m3PerS === 0) return;
      let by = Math.min(1, 1 / (hottest(first) - first.heat.room_K));
      let before = Math.abs(answer(scaled(input, by), fansStopped)?.air.massFlow_kgPerS ?? Number.NaN);
      for (let halving = 0; halving < 24; halving++) {
        by /= 2;
        const now = Math.abs(answer(scaled(input, by), fansStopped)?.air.massFlow_kgPerS ?? Number.NaN);
        expect(now / before).toBeGreaterThan(0.45); // in proportion at most
        expect(now / before).toBeLessThan(0.95); // and with their third power at least
        before = now;
      }
    });
  });
});

describe('any usual box with its fans running', () => {
  test('turned by older fans has less air', () => {
    everyBox(300, (input) => {
      const { fan } = input;
      const older = { ...input, fan: { ...fan, speedLoss: 0.1 + 0.9 * fan.speedLoss } };
      const [before, after] = [answer(input, ordinaryRun), answer(older, ordinaryRun)];
      if (before && after) expect(after.air.flow_m3PerS).toBeLessThan(before.air.flow_m3PerS * (1 + 1e-6));
    });
  });

  test('has more air for one more fan in a row that warms nothing', () => {
    everyBox(300, (input) => {
      const cold = { ...input, fan: { ...input.fan, power_W: 0, others: [] } };
      const longer = { ...cold, fan: { ...cold.fan, inARow: cold.fan.inARow + 1 } };
      const [before, after] = [answer(cold, ordinaryRun), answer(longer, ordinaryRun)];
      if (before && after) expect(after.air.flow_m3PerS).toBeGreaterThan(before.air.flow_m3PerS * (1 - 1e-7));
    });
  });

  test('has from rest no more air than from free delivery', () => {
    everyBox(300, (input) => {
      const [most, least] = [answer(input, ordinaryRun), answer(input, leastFlow)];
      if (most && least) expect(least.air.flow_m3PerS).toBeLessThan(most.air.flow_m3PerS * (1 + 1e-9));
    });
  });

  test('has its watts scaled by the scale of the load, in every way of giving it', () => {
    everyBox(300, (input) => {
      const [once, half] = [answer(input, ordinaryRun), answer(scaled(input, 0.5), ordinaryRun)];
      if (!once || !half) return;
      expect(Math.abs(half.heat.total_W - once.heat.total_W / 2)).toBeLessThan(
        1e-12 * (1 + once.heat.total_W),
      );
    });
  });
});
