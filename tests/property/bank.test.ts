import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SystemInput } from '../../src/core/system/input.ts';
import type { Solved } from '../../src/core/system/outcome.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { sampleInput } from '../helpers/sampleInput.ts';

const runs = { seed: 20261125, numRuns: 200 };

function solved(input: SystemInput): Solved {
  const outcome = solveSystem(input);
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

function withClearance(gap_m: number, input = sampleInput()): SystemInput {
  return input.baffle
    ? { ...input, baffle: { ...input.baffle, sideClearance_m: gap_m, endClearance_m: gap_m } }
    : input;
}

const bypass = (o: Solved) => 1 - o.air.share.fins;

describe('laws of the whole box', () => {
  test('a wider clearance never lets less air past the fins', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-5, max: 4e-3, noNaN: true }),
        fc.double({ min: 1.01, max: 2, noNaN: true }),
        (gap, factor) => {
          expect(bypass(solved(withClearance(gap * factor)))).toBeGreaterThanOrEqual(
            bypass(solved(withClearance(gap))) - 1e-12,
          );
        },
      ),
      runs,
    );
  });

  test('more volts on the fan never make the film hotter', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 6, max: 11, noNaN: true }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (volts, more) => {
          const at = (supply_V: number) => {
            const input = sampleInput();
            return solved({ ...input, fan: { ...input.fan, supply_V, power_W: 0 } }).heat;
          };
          const low = at(volts);
          const high = at(volts + more);
          expect(high.positions[high.hottest]?.film_K).toBeLessThanOrEqual(
            (low.positions[low.hottest]?.film_K as number) + 1e-9,
          );
        },
      ),
      runs,
    );
  });

  test('air and watts balance to a billionth in every design', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.double({ min: 0.01, max: 6, noNaN: true }),
        fc.double({ min: 1e-5, max: 5e-3, noNaN: true }),
        fc.boolean(),
        (count, watts, gap, baffle) => {
          const input = withClearance(gap, sampleInput(count, watts));
          const wide = { ...input, box: { ...input.box, length_m: 0.02 * count + 0.05 } };
          const { balance } = solved(baffle ? wide : { ...wide, baffle: null });
          expect(balance.air).toBeLessThan(1e-9);
          expect(balance.heat).toBeLessThan(1e-9);
        },
      ),
      runs,
    );
  });

  test('a row that reads the same from both ends is equally hot from both ends', () => {
    const input = sampleInput(6);
    const mirrored: SystemInput = {
      ...input,
      positions: input.positions.map((p) => ({ ...p, flipped: true })),
    };
    const there = solved(input).heat.positions.map((p) => p.film_K);
    const back = solved(mirrored)
      .heat.positions.map((p) => p.film_K)
      .reverse();
    there.forEach((T, i) => {
      expect(Math.abs(T - (back[i] as number))).toBeLessThan(1e-8);
    });
  });

  test('without watts and fan heat everything is at room temperature', () => {
    const input = sampleInput(4, 0);
    const { heat } = solved({ ...input, fan: { ...input.fan, power_W: 0 } });
    for (const p of heat.positions) expect(Math.abs(p.film_K - 298.15)).toBeLessThan(1e-9);
    expect(Math.abs(heat.exhaust_K - 298.15)).toBeLessThan(1e-9);
  });

  test('a bond that conducts without limit leaves only the bond rung out of the ladder', () => {
    const input = sampleInput();
    const { heat } = solved({ ...input, bond: { ...input.bond, k_WPerMK: 1e9, filament_WPerMK: 1e9 } });
    expect(heat.ladder.find((rung) => rung.key === 'bond')?.dT_K).toBeLessThan(1e-6);
  });

  test('the rungs of the ladder add up to the hottest film', () => {
    const { heat } = solved(sampleInput());
    const sum = heat.ladder.reduce((total, rung) => total + rung.dT_K, heat.room_K);
    expect(Math.abs(sum - (heat.positions[heat.hottest]?.film_K as number))).toBeLessThan(1e-9);
  });

  test('closing every gap sends all the air through the fins', () => {
    const gaps = withClearance(0, sampleInput(1));
    const closed = { ...gaps, baffle: gaps.baffle ? { ...gaps.baffle, leakGap_m: 0 } : null };
    const { air } = solved(closed);
    expect(air.share.side + air.share.end + air.share.leak).toBe(0);
    expect(Math.abs(air.share.fins + air.share.between - 1)).toBeLessThan(1e-12);
  });

  test('heat that air and walls take away is the heat of the resistors', () => {
    const { heat } = solved(sampleInput());
    expect(Math.abs((heat.carried_W + heat.shell_W) / heat.total_W - 1)).toBeLessThan(1e-9);
    const bySinks = heat.sinks.reduce((sum, s) => sum + (s?.heat_W ?? 0), 0);
    expect(bySinks).toBeLessThan(heat.carried_W); // the air in the gaps takes the rest
    expect(bySinks).toBeGreaterThan(0.8 * heat.carried_W);
  });
});
