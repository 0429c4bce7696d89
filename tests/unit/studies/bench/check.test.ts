import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { benchCheckJob } from '../../../../src/studies/bench/check.ts';
import { runJob } from '../../../../src/studies/job.ts';
import {
  asDesigned,
  fanStopped,
  flow,
  pairWith,
  pressure,
  readFrom,
  temperature,
} from '../../../helpers/bench.ts';

const check = (design: Design) => runJob(benchCheckJob, { design });
const places = pairWith({
  temperatures: [
    temperature('onFilm', asDesigned),
    temperature('onFilm', fanStopped),
    temperature('onSink', asDesigned, { time_s: 120 }),
  ],
  pressures: [pressure(asDesigned)],
  flows: [flow(asDesigned)],
  voltages: [{ ...asDesigned, reading_V: 12, within_V: 0.1 }],
  sounds: [{ ...asDesigned, reading_dBA: 28, within_dBA: 1.5 }],
});
const exact: Design = { ...places, readings: readFrom(places, places, null) };

/** With the first temperature off by this. */
function filmOff(by_K: number): Design {
  const [first, ...rest] = exact.readings.temperatures;
  if (!first) throw new Error('there is a film');
  const temperatures = [{ ...first, reading_K: first.reading_K + by_K }, ...rest];
  return { ...exact, readings: { ...exact.readings, temperatures } };
}

describe('readings beside computed values', () => {
  test('a prototype just as computed agrees within every instrument', () => {
    const result = check(exact);
    expect(result.answered).toBe(7);
    expect(result.agreeing).toEqual({ instrument: 7, model: 0, disagrees: 0 });
    expect(result.chiSquare.value).toBeLessThan(1e-6);
    expect(result.chiSquare.degrees).toBe(6);
    expect(result.chiSquare.chance).toBeCloseTo(1, 6);
    expect(result.readings.map(({ index }) => index)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  });

  test('three states: within the instrument, within instrument and methods, beyond both', () => {
    const [film] = check(exact).readings;
    const both = film?.both ?? 0;
    expect(both).toBeGreaterThan(1.55);
    expect(both).toBeCloseTo(Math.hypot(1.5, 2 * (film?.model ?? 0)), 12);
    const states = [1.49, 1.51, both * 1.01, -1.49, -1.51, -both * 1.01].map(
      (by_K) => check(filmOff(by_K)).readings[0]?.agreement,
    );
    expect(states).toEqual(['instrument', 'model', 'disagrees', 'instrument', 'model', 'disagrees']);
    const off = check(filmOff(3)).readings[0];
    expect(off?.deviation).toBeCloseTo(3, 5);
    expect(off?.times).toBeCloseTo(2, 5);
  });

  test('every square of deviations counts by the instrument’s standard uncertainty, half of what it states', () => {
    expect(check(filmOff(1.5)).chiSquare.value).toBeCloseTo(4, 3);
  });

  test('methods scatter what rests on them: heat transfer the film, the standing fan only where it stands', () => {
    const [film, still, early, plenum, , volts, sound] = check(exact).readings;
    expect(film?.foremost?.part).toBe('channelHeat');
    expect(still?.foremost?.part).not.toBe('fanFlow');
    expect(early?.model).toBeGreaterThan(0);
    expect(early?.model).toBeLessThan(film?.model ?? 0);
    expect(plenum?.model).toBeGreaterThan(0);
    expect(volts?.model).toBe(0);
    expect(volts?.foremost).toBeNull();
    expect(sound?.foremost).toEqual({ part: 'sound', share: 1 });
  });

  test('volts that fall short at the fan are told, and taken for no fault of the box', () => {
    const low = { ...exact.readings, voltages: [{ ...asDesigned, reading_V: 11.2, within_V: 0.1 }] };
    const result = check({ ...exact, readings: low });
    expect(result.readings[5]).toMatchObject({ computed: 12, agreement: 'disagrees' });
    expect(result.readings[5]?.deviation).toBeCloseTo(-0.8, 12);
    expect(result.chiSquare.value).toBeLessThan(1e-6);
  });

  test('what was fitted scatters by its own uncertainty, the leak too', () => {
    const fitted: Design = {
      ...exact,
      fitted: { ...exact.fitted, readings: 9, fanWithin: 0.5, leakWithin_m: 0.00005 },
    };
    const plain = check(exact);
    const known = check(fitted);
    expect(known.parts.filter((each) => each.fitted).map(({ part }) => part)).toEqual(['fanFlow', 'leak']);
    expect(plain.parts.some((each) => each.fitted)).toBe(false);
    expect(known.readings[3]?.model).toBeGreaterThan(plain.readings[3]?.model ?? 0);
    expect(known.readings[3]?.foremost?.part).toBe('fanFlow');
  });

  test('what has no answer stands in the list with its reason and counts nowhere', () => {
    const temperatures = [temperature('onSink', asDesigned, { number: 9 })];
    const result = check(pairWith({ temperatures }));
    expect(result.readings[0]).toMatchObject({ computed: null, why: 'noSuchSink', agreement: null });
    expect(result.answered).toBe(0);
    expect(result.chiSquare).toEqual({ value: 0, degrees: 0, chance: null });
  });

  test('a design without readings has an empty answer', () => {
    const none = check(pairWith({}));
    expect(none.readings).toEqual([]);
    expect(none.answered).toBe(0);
  });

  test('first pieces give an estimate', () => {
    const first = benchCheckJob.piece({ design: exact }, 0);
    const estimate = benchCheckJob.gather({ design: exact }, [first]);
    expect(estimate.answered).toBe(5);
    expect(benchCheckJob.count({ design: exact })).toBe(3);
  });
});
