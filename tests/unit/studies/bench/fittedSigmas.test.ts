import { describe, expect, test } from 'vitest';
import { unitFactors } from '../../../../src/core/system/input.ts';
import { defaultDesign } from '../../../../src/model/defaults.ts';
import { setAll } from '../../../../src/model/path.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { fittedSigmas } from '../../../../src/studies/bench/fittedSigmas.ts';
import { sigmaOf, withinOf } from '../../../../src/studies/bench/unknowns.ts';
import { createSampler } from '../../../../src/studies/tolerance/sampler.ts';
import { variationsOf } from '../../../../src/studies/tolerance/variations.ts';

const fitted = setAll(defaultDesign, {
  'fitted.readings': 6,
  'fitted.fanFactor': 0.85,
  'fitted.fanWithin': 0.06,
  'fitted.bondFactor': 0.7,
  'fitted.bondWithin': 0.2,
});

test('only what was fitted has an uncertainty of its own', () => {
  expect(fittedSigmas(defaultDesign)).toEqual({});
  expect(Object.keys(fittedSigmas(fitted)).sort()).toEqual(['bondConductivity', 'fanFlow']);
});

test('half widths of 95 % and standard uncertainties are told in one another', () => {
  for (const unknown of ['bond', 'leak'] as const)
    expect(withinOf(unknown, sigmaOf(unknown, 0.0004))).toBeCloseTo(0.0004, 12);
  expect(sigmaOf('bond', 0.02)).toBeCloseTo(0.0102, 4);
});

describe('boxes drawn about a fitted design', () => {
  const input = toCore(fitted);
  const question = { design: fitted, draws: 2000, seed: 5, boxes: 1, methods: true };
  const variations = variationsOf(fitted, input, true);
  const sampler = createSampler(question, variations);
  const drawn = Array.from({ length: 2000 }, (_, i) => ({ ...sampler.inputAt(i).factors }));
  const logs = (factor: keyof typeof unitFactors) => drawn.map((each) => Math.log(each[factor]));
  const mean = (values: readonly number[]) => values.reduce((sum, each) => sum + each, 0) / values.length;
  const deviation = (values: readonly number[]) => {
    const middle = mean(values);
    return Math.sqrt(mean(values.map((each) => (each - middle) ** 2)));
  };

  test('fitted factors are the middle, and scatter by what the readings leave open', () => {
    expect(mean(logs('fanFlow'))).toBeCloseTo(Math.log(0.85), 3);
    expect(deviation(logs('fanFlow'))).toBeCloseTo(sigmaOf('fan', 0.06), 3);
    expect(mean(logs('bondConductivity'))).toBeCloseTo(Math.log(0.7), 3);
    expect(deviation(logs('bondConductivity'))).toBeCloseTo(sigmaOf('bond', 0.2), 3);
  });

  test('the others keep the scatter of their cards', () => {
    const plain = variationsOf(defaultDesign, toCore(defaultDesign), true);
    const own = variations.list.flatMap((each) => (each.is === 'method' ? [each.scatter] : []));
    for (const each of plain.list) {
      if (each.is !== 'method') continue;
      const { factor, sigma } = each.scatter;
      const here = own.find((scatter) => scatter.factor === factor);
      if (factor === 'fanFlow' || factor === 'bondConductivity') expect(here?.fitted).toBe(true);
      else expect(here).toMatchObject({ sigma, fitted: false });
    }
    expect(mean(logs('channelHeat'))).toBeCloseTo(0, 3);
  });

  test('without scatter of methods every box has the fitted factors', () => {
    const still = variationsOf(fitted, input, false);
    const exact = createSampler({ ...question, methods: false }, still);
    expect(exact.inputAt(7).factors).toEqual({ ...unitFactors, fanFlow: 0.85, bondConductivity: 0.7 });
  });
});
