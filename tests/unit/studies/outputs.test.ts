import { describe, expect, test } from 'vitest';
import { ordinaryRun } from '../../../src/core/system/input.ts';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import { eightResistors } from '../../../src/model/examples/eightResistors.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { judgedOf } from '../../../src/studies/outputs.ts';
import { pulseSwing } from '../../../src/studies/ratedLoad.ts';
import { solved } from '../../helpers/solved.ts';

describe('an outcome as studies compare it', () => {
  const load = { ...eightResistors.load, duty: 0.3, period_s: 5 };
  const input = toCore({ ...eightResistors, load });
  const followed = solved(input);
  const mean = solveSystem(input, { ...ordinaryRun, pulses: false });
  const swing = pulseSwing(followed);

  test('judges films at the end of a pulse by how far they swing, without following them', () => {
    const judged = judgedOf(mean, { swing, spareFactor: input.limits.spareFactor });
    expect(swing).toBeGreaterThan(1.05);
    expect(judged?.outputs.film_K).toBeCloseTo(followed.pulse?.peak_K ?? 0, 6);
    const pulse = followed.limits.find(({ key }) => key === 'pulse');
    expect(judged?.outputs.filmMargin_K).toBeCloseTo(pulse?.margin_K ?? 0, 6);
    expect(judged?.state).toBe(followed.verdict.state);
  });

  test('lets a peak that passes its limit decide', () => {
    const judged = judgedOf(mean, { swing: 8, spareFactor: input.limits.spareFactor });
    expect(judged).toMatchObject({ state: 'fails', limit: 'pulse' });
  });

  test('is as it was found where the load stays on', () => {
    const steady = solved(toCore(eightResistors));
    expect(judgedOf(steady)).toMatchObject({ state: steady.verdict.state, limit: steady.verdict.limit.key });
  });
});
