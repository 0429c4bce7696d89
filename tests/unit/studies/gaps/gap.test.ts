import { describe, expect, test } from 'vitest';
import { checkDesign } from '../../../../src/model/check.ts';
import { defaultDesign } from '../../../../src/model/defaults.ts';
import { exampleById, examples } from '../../../../src/model/examples/examples.ts';
import {
  gapKeys,
  gapRoom,
  gapValues,
  presentGap_m,
  stepValues_m,
  usualSteps,
} from '../../../../src/studies/gaps/gap.ts';
import { tryValues, withValues } from '../../../../src/studies/vary.ts';

const design = exampleById('eightResistors');

describe('the room for a gap', () => {
  test('ends where the box, the row or the sinks are in the way', () => {
    expect(gapRoom(design, 'sideClearance_m').most_m).toBeCloseTo((0.045 - 0.025) / 2, 9);
    expect(gapRoom(design, 'slotWidth_m').most_m).toBeCloseTo(0.045, 9);
    expect(gapRoom(design, 'leakGap_m')).toEqual({ least_m: 0, most_m: 0.02 });
  });

  test.each(gapKeys)('is just what can be built: %s', (gap) => {
    const { most_m } = gapRoom(design, gap);
    expect(checkDesign(withValues(design, gapValues(gap, most_m)))).toEqual([]);
    if (most_m < 0.02) expect(checkDesign(withValues(design, gapValues(gap, most_m * 1.01)))).not.toEqual([]);
  });

  test('is nothing where the box fits the sinks tightly', () => {
    const tight = { ...design, box: { ...design.box, width_m: design.sink.width_m } };
    expect(gapRoom(tight, 'sideClearance_m').most_m).toBe(0);
  });
});

describe('the usual range of a gap', () => {
  test('goes from tight to loose around the present value, in round steps', () => {
    expect(usualSteps(design, 'sideClearance_m')).toEqual({ from_m: 0, to_m: 0.004, step_m: 0.0005 });
    expect(usualSteps(design, 'slotWidth_m')).toEqual({ from_m: 0.005, to_m: 0.045, step_m: 0.005 });
    expect(usualSteps(design, 'leakGap_m')).toEqual({ from_m: 0, to_m: 0.0005, step_m: 0.0001 });
  });

  test('ends where the box does, not a bit of a binary number before: 10 mm each side of 25 mm in 45 mm', () => {
    const wide = { ...design, baffle: { ...design.baffle, sideClearance_m: 0.004 } };
    const { to_m } = usualSteps(wide, 'sideClearance_m');
    expect(to_m).toBe(0.01);
    expect(tryValues(wide, { 'baffle.sideClearance_m': to_m }).ok).toBe(true);
  });

  test('is round in inches for who thinks in inches', () => {
    const { to_m, step_m } = usualSteps(design, 'sideClearance_m', 0.0254);
    expect([to_m / 0.0254, step_m / 0.0254].map((inches) => Number(inches.toFixed(6)))).toEqual([0.16, 0.02]);
  });

  test.each(examples.map(({ id }) => id))(
    'lies inside what can be built and holds the present value: %s',
    (id) => {
      const box = exampleById(id);
      for (const gap of gapKeys) {
        const room = gapRoom(box, gap);
        const { from_m, to_m, step_m } = usualSteps(box, gap);
        const values = stepValues_m({ from_m, to_m, step_m });
        expect(from_m).toBeGreaterThanOrEqual(room.least_m);
        // The last bit of a binary number is nobody's measure: the check of a design lets it pass.
        expect(to_m).toBeLessThanOrEqual(room.most_m * (1 + 1e-12));
        expect(checkDesign(withValues(box, gapValues(gap, to_m)))).toEqual([]);
        expect(values.length).toBeGreaterThan(4);
        expect(values.length).toBeLessThan(14);
        expect(from_m).toBeLessThanOrEqual(box.baffle[gap]);
        expect(to_m).toBeGreaterThanOrEqual(box.baffle[gap]);
      }
    },
  );

  test('is one value where there is no room', () => {
    const tight = { ...design, box: { ...design.box, width_m: design.sink.width_m } };
    expect(stepValues_m(usualSteps(tight, 'sideClearance_m'))).toEqual([0]);
  });
});

test('steps end with the end of the range even where they miss it', () => {
  expect(stepValues_m({ from_m: 0, to_m: 0.001, step_m: 0.0004 })).toEqual([0, 0.0004, 0.0008, 0.001]);
});

test('without a baffle there is no present gap', () => {
  expect(presentGap_m(defaultDesign, 'sideClearance_m')).toBe(0.0008);
  const bare = withValues(defaultDesign, gapValues('sideClearance_m', null));
  expect(presentGap_m(bare, 'sideClearance_m')).toBe(null);
});
