import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { usualSpreads } from '../../../../src/model/spreads/spreads.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import type { ToleranceQuestion } from '../../../../src/studies/tolerance/question.ts';
import { createSampler } from '../../../../src/studies/tolerance/sampler.ts';
import { variationsOf } from '../../../../src/studies/tolerance/variations.ts';

type Row = Design['spreads'][number];
const calm: Row[] = usualSpreads.map(({ path }) => ({ path, kind: 'none', relative: false, size: 0 }));
const only = (...rows: Row[]) => [
  ...calm.filter(({ path }) => !rows.some((row) => row.path === path)),
  ...rows,
];
const even = (path: string, size: number, relative = false): Row => ({
  path,
  kind: 'uniform',
  relative,
  size,
});

function drawn(design: Design, change: Partial<ToleranceQuestion> = {}) {
  const question: ToleranceQuestion = { design, draws: 200, seed: 1, boxes: 1, methods: false, ...change };
  const variations = variationsOf(design, toCore(design), question.methods);
  return { ...createSampler(question, variations), variations };
}
const range = (values: readonly number[]) => [Math.min(...values), Math.max(...values)] as const;
const indices = Array.from({ length: 200 }, (_, i) => i);

describe('boxes drawn', () => {
  test('are the design itself where nothing varies', () => {
    const design = { ...eightResistors, spreads: calm };
    const { inputAt, variations } = drawn(design);
    expect(variations.drawn).toEqual([]);
    expect(inputAt(17)).toEqual(toCore(design));
  });

  test('vary in what has a spread, within it, and in nothing else', () => {
    const design = { ...eightResistors, spreads: only(even('baffle.slotWidth_m', 5e-4)) };
    const { inputAt } = drawn(design);
    const nominal = toCore(design);
    const [low, high] = range(
      indices.map((i) => {
        const input = inputAt(i);
        expect({ ...input, baffle: nominal.baffle }).toEqual(nominal);
        return input.baffle?.slotWidth_m ?? 0;
      }),
    );
    expect(low).toBeGreaterThanOrEqual(0.0205);
    expect(low).toBeLessThan(0.02052);
    expect(high).toBeLessThanOrEqual(0.0215);
    expect(high).toBeGreaterThan(0.02148);
  });

  test('keep a gap from becoming less than nothing', () => {
    const { inputAt, wasMoved } = drawn({ ...eightResistors, spreads: only(even('baffle.leakGap_m', 3e-4)) });
    const gaps = indices.map((i) => inputAt(i).baffle?.leakGap_m ?? -1);
    expect(range(gaps)[0]).toBe(0);
    // A third of the draws would be less than nothing.
    expect(Math.abs(gaps.filter((gap) => gap === 0).length - 200 / 3)).toBeLessThan(2);
    expect(wasMoved()).toBe(false);
  });

  test('are brought back where they do not go together, and say so', () => {
    const { baffle } = eightResistors;
    const tight = { ...eightResistors, baffle: { ...baffle, collar_m: 0.025 } };
    const { inputAt, wasMoved } = drawn({ ...tight, spreads: only(even('baffle.collar_m', 2e-4)) });
    const collars = indices.map((i) => [inputAt(i).baffle?.collar_m ?? 0, wasMoved()] as const);
    for (const [collar_m, moved] of collars) {
      expect(collar_m).toBeLessThanOrEqual(0.025);
      expect(moved).toBe(collar_m === 0.025);
    }
    expect(collars.filter(([, moved]) => moved)).toHaveLength(100);
  });

  test('scale all points of a fan’s curve together', () => {
    const { inputAt } = drawn({
      ...eightResistors,
      spreads: only(even('fan.curve[].flow_m3PerS', 0.1, true)),
    });
    const { curve } = inputAt(5).fan;
    const ratio = (curve[1]?.flow_m3PerS ?? 0) / (eightResistors.fan.curve[1]?.flow_m3PerS ?? 1);
    expect(Math.abs(ratio - 1)).toBeGreaterThan(0.001);
    curve.forEach(({ flow_m3PerS, dp_Pa }, i) => {
      expect(flow_m3PerS).toBeCloseTo(ratio * (eightResistors.fan.curve[i]?.flow_m3PerS ?? 0), 12);
      expect(dp_Pa).toBe(eightResistors.fan.curve[i]?.dp_Pa);
    });
  });

  test('let a factor of a method scatter about one as its card says', () => {
    const { inputAt, variations } = drawn({ ...eightResistors, spreads: calm }, { methods: true });
    expect(variations.shared).toBe(variations.drawn.length);
    const logs = indices.map((i) => Math.log(inputAt(i).factors.channelHeat));
    const deviation = Math.sqrt(logs.reduce((sum, each) => sum + each * each, 0) / logs.length);
    expect(deviation).toBeGreaterThan(0.066);
    expect(deviation).toBeLessThan(0.074);
  });
});

describe('tolerances that the design states', () => {
  const supply: Design = {
    ...eightResistors,
    load: {
      ...eightResistors.load,
      excitation: 'seriesVolts',
      supply_V: 80,
      supplyTolerance: 0.05,
      atWorst: true,
    },
    fan: { ...eightResistors.fan, supplySag: 0.1 },
  };
  const byTolerance = (path: string): Row => ({ path, kind: 'tolerance', relative: true, size: 0 });

  test('bound resistances, each by itself, which are not taken at their worst besides', () => {
    const { inputAt } = drawn({ ...supply, spreads: only(byTolerance('parts[].R_Ohm')) });
    const { positions, load } = inputAt(3);
    const ohms = positions.map(({ part }) => part.R_Ohm);
    expect(new Set(ohms).size).toBe(8);
    for (const R_Ohm of ohms) expect(Math.abs(R_Ohm / 22 - 1)).toBeLessThanOrEqual(0.01);
    expect(new Set(positions.map(({ part }) => part.tolerance))).toEqual(new Set([0]));
    expect(load).toMatchObject({ supplyTolerance: 0.05, supply: 80 });
  });

  test('bound the supply', () => {
    const { inputAt } = drawn({ ...supply, spreads: only(byTolerance('load.supply_V')) });
    const [low, high] = range(indices.map((i) => inputAt(i).load.supply));
    expect([Math.round(low * 10), Math.round(high * 10)]).toEqual([760, 840]);
    expect(inputAt(0).load.supplyTolerance).toBe(0);
    expect(inputAt(0).positions[0]?.part.tolerance).toBe(0.01);
  });

  test('let the fan’s supply sag by something between nothing and all of it', () => {
    const { inputAt } = drawn({ ...supply, spreads: only(byTolerance('fan.supplySag')) });
    const [low, high] = range(indices.map((i) => inputAt(i).fan.supply_V));
    expect(low).toBeCloseTo(10.8, 1);
    expect(high).toBeCloseTo(12, 1);
    expect(inputAt(0).fan.supplySag).toBe(0);
  });

  test('bound given watts by the resistance they belong to', () => {
    const { inputAt } = drawn({ ...eightResistors, spreads: only(byTolerance('positions[].power_W')) });
    const watts = inputAt(4).positions.map(({ power_W }) => power_W);
    expect(new Set(watts).size).toBe(8);
    for (const power_W of watts) expect(Math.abs(power_W / 4 - 1)).toBeLessThanOrEqual(0.01);
  });
});
