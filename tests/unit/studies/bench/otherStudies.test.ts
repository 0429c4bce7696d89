import { expect, test } from 'vitest';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import { onePair } from '../../../../src/model/examples/onePair.ts';
import { setAll } from '../../../../src/model/path.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { toleranceJob } from '../../../../src/studies/tolerance/toleranceJob.ts';
import { tryDesign, tryValues } from '../../../../src/studies/vary.ts';

const fitted = setAll(onePair, {
  'fitted.readings': 6,
  'fitted.bondFactor': 0.6,
  'fitted.bondWithin': 0.1,
  'fitted.fanFactor': 0.8,
  'fitted.fanWithin': 0.05,
});
const outcome = solveSystem(toCore(fitted));
if (!outcome.ok) throw new Error('the pair has an answer');
const film_K = outcome.heat.positions[0]?.film_K ?? 0;

test('a study that tries other values keeps what was fitted', () => {
  const plain = tryDesign(onePair);
  const same = tryValues(fitted, { 'room.T_K': fitted.room.T_K });
  if (!plain.ok || !same.ok) throw new Error('both have answers');
  expect(same.outputs.film_K).toBeCloseTo(film_K, 6);
  expect(same.outputs.film_K).toBeGreaterThan(plain.outputs.film_K + 3);
});

test('boxes whose parts vary lie about the fitted one', () => {
  const result = runJob(toleranceJob, { design: fitted, draws: 500, seed: 3, boxes: 1, methods: true });
  expect(result.nominal?.outputs.film_K).toBeCloseTo(film_K, 5);
  const films = result.figures.find(({ key }) => key === 'film_K');
  expect(Math.abs((films?.p50 ?? 0) - film_K)).toBeLessThan(1.5);
});

test('readings are no input: a design with them answers as without', () => {
  const read = setAll(fitted, {
    'readings.flows': [{ reading_m3PerS: 0.5, within_m3PerS: 1e-4, load_W: 1, room_K: 300, fan_V: 5 }],
  });
  expect(toCore(read)).toEqual(toCore(fitted));
});
