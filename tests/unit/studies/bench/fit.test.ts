import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import type { Design } from '../../../../src/model/design.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { benchFit, benchFitJob } from '../../../../src/studies/bench/fit.ts';
import { fittedDesign } from '../../../../src/studies/bench/fittedDesign.ts';
import { runJob } from '../../../../src/studies/job.ts';
import {
  asDesigned,
  fanStopped,
  flow,
  pairWith,
  pressure,
  readFrom,
  temperature,
  withLessFan,
} from '../../../helpers/bench.ts';

const many = pairWith({
  temperatures: [
    temperature('onFilm', asDesigned),
    temperature('onTerminal', asDesigned),
    temperature('onFilm', withLessFan),
    temperature('onSink', fanStopped),
  ],
  pressures: [pressure(asDesigned), pressure(withLessFan)],
  flows: [flow(asDesigned), flow(withLessFan)],
  voltages: [{ ...asDesigned, reading_V: 11.7, within_V: 0.1 }],
  sounds: [{ ...asDesigned, reading_dBA: 40, within_dBA: 1.5 }],
});

/** `design` with exact readings of a prototype that differs so, noise where a seed is given. */
function readBy(
  design: Design,
  fitted: Partial<Design['fitted']>,
  leakGap_m = 0.0001,
  seed?: number,
): Design {
  const prototype = {
    ...design,
    fitted: { ...design.fitted, ...fitted },
    baffle: { ...design.baffle, leakGap_m },
  };
  const telling = { ...design.readings, sounds: [], voltages: [] };
  const readings = readFrom(prototype, { ...design, readings: telling }, seed ?? null);
  return {
    ...design,
    readings: { ...readings, sounds: design.readings.sounds, voltages: design.readings.voltages },
  };
}

describe('a fit to readings', () => {
  test('tells values, readings before and after, and what it rests on', () => {
    const design = readBy(many, { bondFactor: 0.75, fanFactor: 0.85 });
    const fit = runJob(benchFitJob, { design, unknowns: ['bond', 'fan'] });
    expect(fit.refused).toBeNull();
    const [bond, fan] = fit.values;
    expect(bond).toMatchObject({ unknown: 'bond', start: 1, atZero: false });
    expect(bond?.value).toBeCloseTo(0.75, 4);
    expect(fan?.value).toBeCloseTo(0.85, 4);
    expect(fit.after.value).toBeLessThan(1e-4);
    expect(fit.before.value).toBeGreaterThan(10);
    expect(fit.after.degrees).toBe(6);
    expect(fit.readings).toHaveLength(8);
    expect(fit.leftOut).toEqual([8, 9]);
    expect(fit.birge).toBe(1);
    expect(fit.correlation[0]?.[0]).toBe(1);
    expect(fit.correlation[0]?.[1]).toBeCloseTo(fit.correlation[1]?.[0] ?? 0, 12);
    // Leverages add up to the number of unknowns.
    expect(fit.readings.reduce((sum, { leverage }) => sum + leverage, 0)).toBeCloseTo(2, 6);
    expect(bond?.within).toBeGreaterThanOrEqual(bond?.alone ?? 0);
    for (const { timesAfter, agreementAfter } of fit.readings) {
      expect(Math.abs(timesAfter)).toBeLessThan(0.01);
      expect(agreementAfter).toBe('inside');
    }
  });

  test('intervals of factors lie evenly about the logarithm, of the leak about itself', () => {
    const fit = benchFit({ design: readBy(many, { slotFactor: 1.4 }, 0.0004), unknowns: ['slot', 'leak'] });
    const [slot, leak] = fit.values;
    expect((slot?.high ?? 0) / (slot?.value ?? 1)).toBeCloseTo((slot?.value ?? 0) / (slot?.low ?? 1), 8);
    expect((slot?.high ?? 0) - (slot?.low ?? 0)).toBeCloseTo(2 * (slot?.within ?? 0) * (slot?.value ?? 0), 8);
    expect(leak?.value).toBeCloseTo(0.0004, 7);
    expect((leak?.high ?? 0) - (leak?.value ?? 0)).toBeCloseTo(leak?.within ?? 0, 10);
  });

  test('twice the noise than the instruments state widens every interval, and is told', () => {
    const quiet = readBy(many, { bondFactor: 0.8 }, 0.0001, 7);
    const halved = {
      ...quiet.readings,
      temperatures: quiet.readings.temperatures.map((row) => ({ ...row, within_K: row.within_K / 4 })),
    };
    const honest = benchFit({ design: quiet, unknowns: ['bond'] });
    const boasting = benchFit({ design: { ...quiet, readings: halved }, unknowns: ['bond'] });
    expect(honest.birge).toBe(1);
    expect(boasting.after.chance).toBeLessThan(0.05);
    expect(boasting.birge).toBeCloseTo(Math.sqrt(boasting.after.value / boasting.after.degrees), 12);
    expect((boasting.values[0]?.within ?? 0) * 4).toBeGreaterThan(honest.values[0]?.within ?? 0);
  });

  test('readings on the way to rest fit as well', () => {
    const early = pairWith({
      temperatures: [30, 90, 300].flatMap((time_s) => [
        temperature('onFilm', asDesigned, { time_s }),
        temperature('onSink', fanStopped, { time_s: 10 * time_s }),
      ]),
    });
    const fit = benchFit({
      design: readBy(early, { bondFactor: 0.7, emissivityFactor: 0.8 }),
      unknowns: ['bond', 'emissivity'],
    });
    expect(fit.refused).toBeNull();
    expect(fit.values[0]?.value).toBeCloseTo(0.7, 2);
    expect(fit.values[1]?.value).toBeCloseTo(0.8, 2);
  });

  test('a box without any leak is found to have none, with a one-sided limit', () => {
    const tight = Array.from({ length: 12 }, (_, seed) =>
      benchFit({ design: readBy(many, {}, 0, seed + 1), unknowns: ['leak', 'bond'] }),
    );
    const none = tight.filter(({ values }) => values[0]?.atZero);
    // Half of the time noise would have it below nil.
    expect(none.length).toBeGreaterThan(1);
    expect(none.length).toBeLessThan(11);
    const holding = tight.filter(({ values }) => values[0]?.low === 0);
    expect(holding.length).toBeGreaterThanOrEqual(11);
    for (const { values } of none) {
      expect(values[0]).toMatchObject({ value: 0, low: 0 });
      expect(values[0]?.high).toBeGreaterThan(0);
      expect(values[0]?.high).toBeLessThan(0.0002);
      expect(values[0]?.within).toBe(values[0]?.high);
    }
  });
});

describe('a design fitted', () => {
  const design = readBy(many, { bondFactor: 0.75, fanFactor: 0.85 });
  const fit = benchFit({ design, unknowns: ['bond', 'fan'] });
  const fitted = fittedDesign(design, fit);

  test('has what was found in place of the handbook’s, and says of how many readings', () => {
    expect(fitted.fitted.readings).toBe(8);
    expect(fitted.fitted.bondFactor).toBeCloseTo(0.75, 4);
    expect(fitted.fitted.bondWithin).toBeCloseTo(fit.values[0]?.within ?? 0, 4);
    expect(fitted.fitted.slotFactor).toBe(1);
    expect(fitted.fitted.slotWithin).toBe(0);
    expect(toCore(fitted).factors.fanFlow).toBeCloseTo(0.85, 4);
  });

  test('fitted again it stays: values are absolute, whatever it began with', () => {
    const again = benchFit({ design: fitted, unknowns: ['bond', 'fan'] });
    expect(again.values[0]?.start).toBe(fitted.fitted.bondFactor);
    again.values.forEach((each, i) => {
      expect(each.value).toBeCloseTo(fit.values[i]?.value ?? 0, 4);
    });
    const only = fittedDesign(fitted, benchFit({ design: fitted, unknowns: ['leak'] }));
    expect(only.fitted.bondFactor).toBe(fitted.fitted.bondFactor);
    expect(only.fitted.leakWithin_m).toBeGreaterThan(0);
  });

  test('answers as the prototype was read', () => {
    const outcome = solveSystem(toCore(fitted));
    const prototype = solveSystem(
      toCore({ ...design, fitted: { ...design.fitted, bondFactor: 0.75, fanFactor: 0.85 } }),
    );
    if (!outcome.ok || !prototype.ok) throw new Error('both have answers');
    expect(outcome.heat.positions[0]?.film_K).toBeCloseTo(prototype.heat.positions[0]?.film_K ?? 0, 2);
  });

  test('a refused fit changes nothing', () => {
    expect(fittedDesign(design, benchFit({ design, unknowns: [] }))).toBe(design);
  });
});

describe('what is refused, and why', () => {
  const refused = (design: Design, ...unknowns: Parameters<typeof benchFit>[0]['unknowns']) =>
    benchFit({ design, unknowns }).refused;
  const exhausts = pairWith({
    temperatures: [temperature('inExhaust', asDesigned), temperature('inExhaust', withLessFan)],
  });

  test('no unknown, too many, and one that the box has not', () => {
    expect(refused(many)).toEqual({ why: 'noUnknowns' });
    expect(refused(many, 'bond', 'leak', 'slot', 'fan')).toEqual({ why: 'tooManyUnknowns', most: 3 });
    const open = { ...many, baffle: { ...many.baffle, fitted: false } };
    expect(refused(open, 'fan', 'slot')).toEqual({ why: 'notInDesign', unknown: 'slot' });
    expect(refused(open, 'leak')).toEqual({ why: 'notInDesign', unknown: 'leak' });
  });

  test('fewer readings than unknowns, those that tell nothing not counted', () => {
    const one = pairWith({ flows: [flow(asDesigned)], sounds: many.readings.sounds });
    expect(refused(one, 'slot', 'leak')).toEqual({ why: 'tooFewReadings', used: 1, needed: 2 });
    expect(refused(pairWith({}), 'bond')).toEqual({ why: 'tooFewReadings', used: 0, needed: 1 });
  });

  test('bond and emissivity from the exhaust alone: it hardly knows of either', () => {
    expect(refused(readBy(exhausts, {}), 'bond', 'emissivity')).toEqual({
      why: 'insensitive',
      unknown: 'bond',
    });
  });

  test('slot and leak from flows alone: one does what the other does', () => {
    const flows = pairWith({ flows: [flow(asDesigned), flow(withLessFan), flow(asDesigned)] });
    const answer = refused(readBy(flows, {}), 'slot', 'leak');
    if (answer?.why !== 'notDistinguishable') throw new Error(`refused for ${answer?.why}`);
    expect([...answer.unknowns].sort()).toEqual(['leak', 'slot']);
    // More loss in the slot and more leak: opposite ways on the flow.
    expect(answer.alikeness).toBeLessThan(-0.99);
    expect((answer.direction[0] as number) * (answer.direction[1] as number)).toBeGreaterThan(0);
    expect(Math.hypot(...answer.direction)).toBeCloseTo(1, 10);
  });

  test('from films alone: the slot hardly shows, and without a fan leak and emissivity both only cool', () => {
    const films = pairWith({
      temperatures: [temperature('onFilm', asDesigned), temperature('onFilm', asDesigned)],
    });
    const answer = refused(readBy(films, {}), 'bond', 'slot');
    expect(answer?.why).toBe('insensitive');
    const still = pairWith({
      temperatures: [temperature('onFilm', fanStopped), temperature('onFilm', fanStopped)],
    });
    expect(refused(readBy(still, {}), 'leak', 'emissivity')?.why).toBe('notDistinguishable');
  });

  test('a reading without an answer, by its number', () => {
    const [first, ...rest] = many.readings.temperatures;
    if (!first) throw new Error('there is one');
    const temperatures = [...rest, { ...first, number: 5 }];
    expect(refused({ ...many, readings: { ...many.readings, temperatures } }, 'bond')).toEqual({
      why: 'noAnswer',
      reading: 3,
      noAnswer: 'noSuchResistor',
    });
  });

  test('an unknown that runs to the end of what is believable', () => {
    const cold = pairWith({
      temperatures: [temperature('onTerminal', asDesigned, { reading_K: 880 })],
    });
    const answer = refused(cold, 'bond');
    expect(answer).toMatchObject({ why: 'atBound', unknown: 'bond' });
    const cool = pairWith({
      temperatures: [temperature('onFilm', asDesigned, { reading_K: 290 })],
    });
    expect(refused(cool, 'bond')).toMatchObject({ why: 'atBound', unknown: 'bond' });
  });
});
