import { describe, expect, test } from 'vitest';
import { addBehind, fromRestToFree } from '../../../../src/core/fan/addBehind.ts';
import { curveStage } from '../../../../src/core/fan/fanMember.ts';
import { evaluatePchip, preparePchip } from '../../../../src/core/solve/pchip.ts';

const out = new Float64Array(2);
const at = (curve: ReturnType<typeof preparePchip>, flow: number) => {
  evaluatePchip(curve, flow, out);
  return out[0] as number;
};

describe('addBehind', () => {
  const one = preparePchip([0, 3, 7, 10], [40, 30, 25, 0]);
  const other = preparePchip([0, 2, 4, 6], [12, 5, 9, 0]);
  const sum = addBehind([curveStage(one), curveStage(other)], 10);

  test('is the sum at every flow, within the points of one and beyond those of the other', () => {
    for (let flow = 0; flow <= 10; flow += 0.07)
      expect(at(sum, flow)).toBeCloseTo(at(one, flow) + at(other, flow), 11);
  });

  test('has a point wherever it turns', () => {
    for (let i = 1; i < sum.x.length; i++) {
      const low = sum.x[i - 1] as number;
      const high = sum.x[i] as number;
      const rises = (sum.y[i] as number) > (sum.y[i - 1] as number);
      let before = at(sum, low);
      for (let k = 1; k <= 20; k++) {
        const here = at(sum, low + ((high - low) * k) / 20);
        expect(rises ? here - before : before - here).toBeGreaterThan(-1e-12);
        before = here;
      }
    }
  });

  test('takes a rise within rounding for level', () => {
    const level = preparePchip([0, 1, 2, 4], [0.1, 0.1, 0.1, 0]);
    const { y } = addBehind([curveStage(level), curveStage(level), curveStage(level)], 4);
    for (let i = 1; i < y.length; i++) expect(y[i]).toBeLessThanOrEqual(y[i - 1] as number);
  });
});

describe('fromRestToFree', () => {
  test('cuts a curve at no flow and at no pressure, changing nothing between', () => {
    const long = preparePchip([-3, -1, 2, 5, 9], [70, 52, 30, 10, -20]);
    const cut = fromRestToFree(long);
    expect(cut.x[0]).toBe(0);
    expect(cut.y.at(-1)).toBe(0);
    const free = cut.x.at(-1) as number;
    expect(at(long, free)).toBeCloseTo(0, 12);
    for (let i = 0; i <= 40; i++) expect(at(cut, (free * i) / 40)).toBeCloseTo(at(long, (free * i) / 40), 11);
  });

  test('leaves a curve that is so already as it is', () => {
    const curve = preparePchip([0, 2, 5], [30, 20, 0]);
    const cut = fromRestToFree(curve);
    expect(Array.from(cut.x)).toEqual([0, 2, expect.closeTo(5, 12)]);
    expect(Array.from(cut.y)).toEqual([30, 20, 0]);
    cut.slope.forEach((slope, i) => {
      expect(slope / (curve.slope[i] as number)).toBeCloseTo(1, 10);
    });
  });

  test('ends at the last flow that still has pressure, where the curve comes back from a dip', () => {
    const cut = fromRestToFree(preparePchip([0, 2, 4, 6, 8], [20, -1, 5, 4, -3]));
    expect(cut.x.at(-1)).toBeGreaterThan(6);
    expect(cut.x.at(-1)).toBeLessThan(8);
  });
});
