import { hash32 } from '../../src/core/solve/hash32.ts';
import { normalQuantile } from '../../src/core/solve/normal.ts';
import type { Design } from '../../src/model/design.ts';
import { onePair } from '../../src/model/examples/onePair.ts';
import { toCore } from '../../src/model/toCore.ts';
import { benchModel } from '../../src/studies/bench/benchModel.ts';
import { readingsOf } from '../../src/studies/bench/readingsOf.ts';
import type { TemperaturePlace } from '../../src/studies/bench/types.ts';

type Readings = Design['readings'];
type Row = Readings['temperatures'][number];

/** How a prototype is run, in tests: the fan as designed, with less, at a stand. */
export const asDesigned = { load_W: 1.6, room_K: 296.15, fan_V: 12 };
export const withLessFan = { ...asDesigned, fan_V: 8 };
export const fanStopped = { ...asDesigned, load_W: 0.8, fan_V: 0 };
type Run = typeof asDesigned;

export function temperature(
  where: TemperaturePlace,
  run: Run,
  { number = 1, reading_K = 300, time_s }: { number?: number; reading_K?: number; time_s?: number } = {},
): Row {
  return {
    where,
    number,
    reading_K,
    within_K: 1.5,
    ...run,
    settled: time_s === undefined,
    time_s: time_s ?? 0,
  };
}

export const pressure = (run: Run, reading_Pa = 20) => ({ reading_Pa, within_Pa: 1, ...run });
export const flow = (run: Run, reading_m3PerS = 0.001) => ({ reading_m3PerS, within_m3PerS: 5e-5, ...run });

/** Invented: the pair of sinks, small enough to be solved in a tenth of a millisecond, with these readings. */
export function pairWith(readings: Partial<Readings>): Design {
  const none: Readings = { temperatures: [], pressures: [], flows: [], voltages: [], sounds: [] };
  const baffle = { ...onePair.baffle, leakGap_m: 0.0001 };
  return { ...onePair, baffle, readings: { ...none, ...readings } };
}

/**
 * The readings of a design as another one would give them, each off by normal noise of its instrument.
 * @param seed `null` for exact ones
 */
export function readFrom(truth: Design, { readings }: Design, seed: number | null): Readings {
  const input = toCore(truth);
  const list = readingsOf({ ...truth, readings });
  const values = benchModel(input, list).compute(input);
  let at = 0;
  const next = (within: number) => {
    const noise = seed === null ? 0 : normalQuantile((hash32(seed, at) + 0.5) / 2 ** 32);
    return (values[at++]?.value ?? Number.NaN) + (noise * within) / 2;
  };
  return {
    temperatures: readings.temperatures.map((row) => ({ ...row, reading_K: next(row.within_K) })),
    pressures: readings.pressures.map((row) => ({ ...row, reading_Pa: next(row.within_Pa) })),
    flows: readings.flows.map((row) => ({ ...row, reading_m3PerS: next(row.within_m3PerS) })),
    voltages: readings.voltages.map((row) => ({ ...row, reading_V: next(row.within_V) })),
    sounds: readings.sounds.map((row) => ({ ...row, reading_dBA: next(row.within_dBA) })),
  };
}
