import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { judgedOf } from '../../../src/studies/outputs.ts';
import { tryValues, withValues } from '../../../src/studies/vary.ts';

const design = exampleById('eightResistors');

describe('a design with other values', () => {
  test('is a copy; what is not named is shared', () => {
    const varied = withValues(design, { 'baffle.sideClearance_m': 0.002, 'positions[3].power_W': 1 });
    expect(varied.baffle.sideClearance_m).toBe(0.002);
    expect(varied.positions[3]?.power_W).toBe(1);
    expect(varied.fan).toBe(design.fan);
    expect(design.positions[3]?.power_W).toBe(4);
  });

  test('without any is judged as the bench judges it', () => {
    const outcome = solveSystem(toCore(design));
    const trial = tryValues(design, {});
    if (!trial.ok || !outcome.ok) throw new Error('no answer');
    expect(trial.outputs.film_K).toBe(outcome.heat.positions[outcome.heat.hottest]?.film_K);
    expect(trial.state).toBe(outcome.verdict.state);
    expect(trial.limit).toBe(outcome.verdict.limit.key);
  });

  test('that cannot be built says what does not go together', () => {
    expect(tryValues(design, { 'baffle.collar_m': 0.4 })).toMatchObject({
      ok: false,
      why: 'clash',
      problem: { path: 'baffle.collar_m', code: 'collarTooHigh' },
    });
  });

  test('that has no answer says why', () => {
    expect(tryValues(design, { 'fan.supply_V': 0.5 })).toEqual({
      ok: false,
      why: 'noAnswer',
      reason: 'fanDoesNotStart',
    });
  });
});

describe('the figures of an outcome', () => {
  test('are read off its limits and its hottest parts', () => {
    const outcome = solveSystem(toCore(design));
    if (!outcome.ok) throw new Error('no answer');
    const film = outcome.limits.find(({ key }) => key === 'film');
    const outputs = judgedOf(outcome)?.outputs;
    expect(outputs?.filmMargin_K).toBe(film?.margin_K);
    const factors = outcome.limits.flatMap(({ loadFactor }) => (loadFactor === null ? [] : [loadFactor]));
    expect(outputs?.loadFactor).toBe(Math.min(...factors));
    expect(outputs?.joint_K).toBe(Math.max(...outcome.heat.positions.map(({ joint_K }) => joint_K)));
  });

  test('are none where there is no answer', () => {
    expect(judgedOf({ ok: false, reason: 'runaway', details: {} })).toBe(null);
  });
});
