import { describe, expect, test } from 'vitest';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { onePair } from '../../../../src/model/examples/onePair.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { type FinRules, finSets, heightInBox_m } from '../../../../src/studies/sizing/finRules.ts';
import { finSizingJob } from '../../../../src/studies/sizing/finSizing.ts';
import { finValues } from '../../../../src/studies/sizing/finTrial.ts';
import type { Target } from '../../../../src/studies/sizing/target.ts';
import { tryValues } from '../../../../src/studies/vary.ts';

const rules: FinRules = {
  cutters_m: [0.003, 0.0015],
  depthRatio: 4,
  thicknesses_m: [0.0015, 0.0008, 0.001],
  leastThickness_m: 0.001,
  leastHeight_m: 0.004,
  mostHeight_m: 0.05,
  mostSound_dBA: null,
  mostPressure_Pa: null,
};
const target: Target = { ask: 'everyLimit', margin_K: 10 };

describe('the sets that the workshop can cut', () => {
  const sets = finSets(onePair, rules);

  test('have slots for an end mill, and are no deeper than it reaches', () => {
    for (const { gap_m, mostHeight_m } of sets) {
      expect(gap_m).toBeGreaterThanOrEqual(0.0015 - 1e-12);
      expect(mostHeight_m).toBeLessThanOrEqual(4 * (gap_m < 0.003 ? 0.0015 : 0.003) + 1e-12);
    }
    expect(sets.some(({ mostHeight_m }) => mostHeight_m === 0.006)).toBe(true);
    expect(sets.some(({ mostHeight_m }) => mostHeight_m === 0.012)).toBe(true);
  });

  test('fill the width, with no fin thinner than the shop mills', () => {
    for (const { count, thickness_m, gap_m } of sets) {
      expect(thickness_m).toBeGreaterThanOrEqual(0.001);
      expect(count * thickness_m + (count - 1) * gap_m).toBeCloseTo(onePair.sink.width_m, 12);
    }
  });

  test('take the count at which the slot is just the end mill', () => {
    // 20 mm: ten fins of 0.65 mm and nine slots of 1.5 mm
    const exact = finSets(onePair, { ...rules, thicknesses_m: [0.00065], leastThickness_m: 0 });
    expect(Math.max(...exact.map(({ count }) => count))).toBe(10);
  });

  test('are no higher than the box has room for', () => {
    const high = finSets(eightResistors, { ...rules, depthRatio: 20 });
    const room_m = heightInBox_m(eightResistors);
    expect(Math.max(...high.map(({ mostHeight_m }) => mostHeight_m))).toBeCloseTo(room_m, 3);
    const at = (finHeight_m: number) => tryValues(eightResistors, { 'sink.finHeight_m': finHeight_m });
    expect(at(room_m - 1e-9).ok).toBe(true);
    expect(at(room_m + 1e-6)).toMatchObject({ why: 'clash' });
  });

  test('are none without an end mill that fits, or where its reach is too short', () => {
    expect(finSets(onePair, { ...rules, cutters_m: [] })).toEqual([]);
    expect(finSets(onePair, { ...rules, cutters_m: [0.02] })).toEqual([]);
    expect(finSets(onePair, { ...rules, depthRatio: 1 })).toEqual([]);
  });
});

describe('the best fins', () => {
  const result = runJob(finSizingJob, { design: onePair, target, rules });
  const { pick, byCount, overSound, overPressure, now } = result;

  test('are the coolest of every set, height and supply that was looked at', () => {
    expect(pick).toEqual(byCount[0]);
    for (const { film_K } of [...byCount, ...overSound, ...overPressure])
      expect(film_K).toBeGreaterThanOrEqual(pick?.film_K ?? 0);
  });

  test('are no worse than any height of their own set beside them', () => {
    if (!pick) throw new Error('something can be cut');
    for (const off_m of [-0.002, -0.0005, -0.0001]) {
      const trial = tryValues(onePair, finValues(onePair, { ...pick, height_m: pick.height_m + off_m }));
      expect(trial.ok && trial.outputs.film_K).toBeGreaterThanOrEqual(pick.film_K - 1e-9);
    }
  });

  test('put into the design run as told', () => {
    for (const point of [pick, overSound[0], overPressure[0]]) {
      if (!point) throw new Error('something can be cut');
      const trial = tryValues(onePair, finValues(onePair, point));
      if (!trial.ok) throw new Error('it can be built');
      expect(trial.outputs.film_K).toBeCloseTo(point.film_K, 9);
      expect(trial.outputs.sound_dBA).toBeCloseTo(point.sound_dBA, 9);
    }
  });

  test('cost kelvin where less sound or less pressure is wanted', () => {
    for (const front of [overSound, overPressure]) {
      expect(front.length).toBeGreaterThan(3);
      for (const [i, point] of front.entries())
        if (i > 0) expect(point.film_K).toBeLessThan(front[i - 1]?.film_K ?? 0);
    }
    expect(overSound[0]?.supply_V).toBeCloseTo(onePair.fan.start_V, 6);
    expect(overSound.at(-1)?.supply_V).toBe(onePair.fan.supply_V);
  });

  test('stay within bounds on sound and pressure', () => {
    const bounded = runJob(finSizingJob, {
      design: onePair,
      target,
      rules: { ...rules, mostSound_dBA: 20, mostPressure_Pa: 8 },
    });
    expect(bounded.pick?.sound_dBA).toBeLessThanOrEqual(20);
    expect(bounded.pick?.pressure_Pa).toBeLessThanOrEqual(8);
    expect(bounded.pick?.film_K).toBeGreaterThan(pick?.film_K ?? 0);
    const silent = { ...rules, mostSound_dBA: 1 };
    expect(runJob(finSizingJob, { design: onePair, target, rules: silent }).pick).toBeNull();
  });

  test('are told beside the present ones, which the rules may not allow', () => {
    expect(now).toMatchObject({ count: 7, thickness_m: 0.0008, height_m: 0.01 });
    expect(result.nowAllowed).toBe(false); // slots of 2.4 mm for the mill of 1.5 mm, 10 mm deep
    const longer = { ...rules, depthRatio: 7, leastThickness_m: 0.0008 };
    expect(finSizingJob.gather({ design: onePair, target, rules: longer }, []).nowAllowed).toBe(true);
  });
});
