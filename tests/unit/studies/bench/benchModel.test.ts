import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { benchModel, grouped } from '../../../../src/studies/bench/benchModel.ts';
import { onBench } from '../../../../src/studies/bench/conditions.ts';
import { readingsOf } from '../../../../src/studies/bench/readingsOf.ts';
import type { Computed } from '../../../../src/studies/bench/types.ts';
import { asDesigned, fanStopped, flow, pairWith, pressure, temperature } from '../../../helpers/bench.ts';
import { oneReadingEach } from '../../../helpers/readings.ts';

const places = ['onFilm', 'onTerminal', 'onSink', 'onSheet', 'inExhaust'] as const;

function computed(design: Parameters<typeof readingsOf>[0]): Computed[] {
  const input = toCore(design);
  return benchModel(input, readingsOf(design)).compute(input);
}
const values = (design: Parameters<typeof readingsOf>[0]) => computed(design).map(({ value }) => value);

describe('what a box has where it was read', () => {
  test('every place is that of the answer under the same conditions', () => {
    const design = pairWith({
      temperatures: places.map((where) => temperature(where, asDesigned)),
      pressures: [pressure(asDesigned)],
      flows: [flow(asDesigned)],
      voltages: [{ ...asDesigned, reading_V: 11.8, within_V: 0.1 }],
      sounds: [{ ...asDesigned, reading_dBA: 30, within_dBA: 1.5 }],
    });
    const bench = onBench(toCore(design), { ...asDesigned, time_s: null });
    const outcome = bench && solveSystem(bench.input, bench.run);
    if (!outcome?.ok) throw new Error('the pair has an answer');
    const { heat, air } = outcome;
    const [sink] = heat.sinks;
    const expected = [
      heat.positions[0]?.film_K,
      heat.positions[0]?.joint_K,
      sink?.after_K,
      sink?.outside_K,
      heat.exhaust_K,
      air.plenum_Pa,
      air.flow_m3PerS,
      12,
      air.sound_dBA,
    ];
    values(design).forEach((value, i) => {
      expect(value).toBeCloseTo(expected[i] as number, 5);
    });
  });

  test('what has no answer says why, and the others have theirs', () => {
    const design = pairWith({
      temperatures: [
        temperature('onFilm', asDesigned, { number: 2 }),
        temperature('onSink', asDesigned, { number: 3 }),
        temperature('onSink', asDesigned, { number: 2 }),
      ],
      sounds: [{ ...fanStopped, reading_dBA: 30, within_dBA: 1.5 }],
    });
    expect(computed(design).map(({ why }) => why)).toEqual([
      'noSuchResistor',
      'noSuchSink',
      null,
      'nothingTurns',
    ]);
    const idle = { ...design, load: { ...design.load, supply_A: 0 } };
    expect(computed(idle).map(({ why }) => why)).toEqual(['noLoad', 'noLoad', 'noLoad', 'noLoad']);
  });

  test('an end without a sink keeps the numbers of the others', () => {
    const pair = pairWith({
      temperatures: [1, 2].map((number) => temperature('onSink', asDesigned, { number })),
    });
    const oneSided = { ...pair, sink: { ...pair.sink, first: false }, secondFace: pair.secondFace };
    const [first, second] = computed({
      ...oneSided,
      positions: oneSided.positions.map((position) => ({ ...position, flipped: true })),
    });
    expect(first?.why).toBe('noSuchSink');
    expect(second?.value).toBeGreaterThan(296.15);
  });

  test('one answer serves all readings of equal conditions', () => {
    const design = { ...pairWith({}), readings: oneReadingEach };
    expect(grouped(readingsOf(design))).toHaveLength(1);
    const apart = pairWith({
      temperatures: [
        temperature('onFilm', asDesigned),
        temperature('onFilm', fanStopped),
        temperature('onFilm', asDesigned, { time_s: 60 }),
        temperature('onSink', asDesigned, { time_s: 90 }),
      ],
    });
    expect(grouped(readingsOf(apart)).map((each) => each.length)).toEqual([1, 1, 2]);
  });
});

describe('read before the box has settled', () => {
  const course = (run: typeof asDesigned, times: readonly number[]) =>
    values(
      pairWith({
        temperatures: places.flatMap((where) => times.map((time_s) => temperature(where, run, { time_s }))),
      }),
    );

  test('it begins at the room and ends where it settles, with the fan and without', () => {
    for (const run of [asDesigned, fanStopped]) {
      const settled = values(pairWith({ temperatures: places.map((where) => temperature(where, run)) }));
      const along = course(run, [0, 40_000]);
      places.forEach((_, p) => {
        const start = along[2 * p] as number;
        expect(Math.abs(start - run.room_K)).toBeLessThan(p === 4 ? 0.8 : 0.01);
        expect(Math.abs((along[2 * p + 1] as number) - (settled[p] as number))).toBeLessThan(0.05);
      });
    }
  });

  test('it only warms on the way, the film first', () => {
    const times = [5, 20, 60, 200, 600];
    const along = course(asDesigned, times);
    places.slice(0, 4).forEach((_, p) => {
      for (let i = 1; i < times.length; i++)
        expect(along[p * times.length + i]).toBeGreaterThan(along[p * times.length + i - 1] as number);
    });
    expect(along[0]).toBeGreaterThan(along[2 * times.length] as number);
  });

  test('a moment asked for alone is the same as among others', () => {
    const [alone] = values(pairWith({ temperatures: [temperature('onSink', asDesigned, { time_s: 60 })] }));
    const among = values(
      pairWith({
        temperatures: [60, 7, 33, 300].map((time_s) => temperature('onSink', asDesigned, { time_s })),
      }),
    );
    expect(Math.abs((among[0] as number) - (alone as number))).toBeLessThan(5e-3);
  });
});
