import { describe, expect, test } from 'vitest';
import { finBetweenPlates } from '../../../../src/core/fins/finBetweenPlates.ts';
import { finEfficiency } from '../../../../src/core/fins/finEfficiency.ts';

function fin(h: number, height_m: number, bothEnds: boolean): readonly [toAir: number, across: number] {
  const out = new Float64Array(2);
  finBetweenPlates(out, h, 200, 1e-3, height_m, 50e-3, bothEnds);
  return [out[0] as number, out[1] as number];
}

describe('finBetweenPlates', () => {
  test('with an open tip is the straight fin', () => {
    const [toAir, across] = fin(40, 20e-3, false);
    expect(toAir).toBeCloseTo(2 * 40 * 20e-3 * 50e-3 * finEfficiency(40, 200, 1e-3, 20e-3), 12);
    expect(across).toBe(0);
  });

  test('without cooling is a plain slab from plate to plate', () => {
    const [toAir, across] = fin(0, 20e-3, true);
    expect(toAir).toBe(0);
    expect(across).toBeCloseTo((200 * 1e-3 * 50e-3) / 20e-3, 12);
  });

  test('agrees with the fin equation solved in 4000 slices, one plate a kelvin up and the other at air temperature', () => {
    const n = 4000;
    const [height_m, h] = [40e-3, 300];
    const dx = height_m / n;
    const m2 = (2 * h) / (200 * 1e-3);
    // Second-order differences, swept from the cold plate: T is proportional to what starts there.
    let [before, here] = [0, 1];
    const first = here;
    for (let i = 1; i < n; i++) [before, here] = [here, here * (2 + m2 * dx * dx) - before];
    const section = 200 * 1e-3 * 50e-3;
    const intoCold = (section * first) / dx / here;
    const fromHot = (section * (here - before)) / dx / here;
    const [toAir, across] = fin(h, height_m, true);
    expect(across).toBeCloseTo(intoCold, 4); // slices of 10 µm
    expect(Math.abs((toAir + across) / fromHot - 1)).toBeLessThan(1e-3); // slices of 10 µm, one-sided at the end
  });

  test('of great height lets nothing across and stays finite', () => {
    const [toAir, across] = fin(1e5, 10, true);
    expect(across).toBeLessThan(1e-100);
    expect(Number.isFinite(toAir)).toBe(true);
  });
});
