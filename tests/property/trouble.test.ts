import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fansStopped, type SystemInput } from '../../src/core/system/input.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { afterFanStop } from '../../src/core/system/timeline.ts';
import { toCore } from '../../src/model/toCore.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';
import { sampleInput } from '../helpers/sampleInput.ts';
import { solved } from '../helpers/solved.ts';

const wide = (count: number, power_W: number): SystemInput => {
  const base = sampleInput(count, power_W);
  return { ...base, sink: { ...base.sink, width_m: 0.075 }, box: { ...base.box, width_m: 0.095 } };
};

describe('time after a stop', () => {
  test.each([
    [1, 3],
    [1, 5],
    [1, 15],
    [4, 3],
  ])(
    'wide channels, %i resistors at %f W: all numbers finite, ends at the answer without fans',
    (count, power_W) => {
      const timeline = afterFanStop(wide(count, power_W));
      const last = timeline?.points.at(-1);
      const { heat } = solved(wide(count, power_W), fansStopped);
      expect(timeline?.points.length).toBeLessThan(300);
      expect(
        Math.abs((last?.film_K ?? Number.NaN) - (heat.positions[heat.hottest]?.film_K ?? 0)),
      ).toBeLessThan(0.5);
    },
  );

  test('a box that hardly warms is not called settled long before it is', () => {
    let checked = 0;
    fc.assert(
      fc.property(arbitraryDesign('usual'), (design) => {
        const input = toCore(design);
        const timeline = afterFanStop(input);
        const outcome = solveSystem(input, { ...fansStopped, pulses: false });
        if (!timeline?.settled || !outcome.ok || outcome.heat.total_W === 0) return;
        checked++;
        const { heat } = outcome;
        const end_K = timeline.points.at(-1)?.film_K ?? Number.NaN;
        const steady_K = heat.positions[heat.hottest]?.film_K ?? Number.NaN;
        expect(Math.abs(end_K - steady_K)).toBeLessThan(0.3 + 0.02 * (steady_K - heat.room_K));
      }),
      { seed: 20261125, numRuns: 300, endOnFailure: true },
    );
    expect(checked).toBeGreaterThan(50);
  });

  test('no usual box has a time without a number, or stands still in tiny steps', () => {
    fc.assert(
      fc.property(arbitraryDesign('usual'), (design) => {
        const points = afterFanStop(toCore(design))?.points ?? [];
        expect(points.length).toBeLessThan(500);
        for (const { film_K } of points) expect(Number.isFinite(film_K)).toBe(true);
      }),
      { seed: 20261125, numRuns: 400, endOnFailure: true },
    );
  });
});
