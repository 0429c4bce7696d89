import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fansStopped, ordinaryRun, type Run, type SystemInput } from '../../src/core/system/input.ts';
import { nearbySolver } from '../../src/core/system/nearbySolver.ts';
import type { Solved } from '../../src/core/system/outcome.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { examples } from '../../src/model/examples/examples.ts';
import { toCore } from '../../src/model/toCore.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';
import { arbitraryShares, neighbourOf } from '../helpers/neighbour.ts';

const seed = 20261125;

/** Kelvin by which two answers differ at the worst place, and the same of the flows as a share of all air. */
function apart(a: Solved, b: Solved) {
  let films_K = Math.abs(a.heat.exhaust_K - b.heat.exhaust_K);
  a.heat.positions.forEach(({ film_K }, r) => {
    films_K = Math.max(films_K, Math.abs(film_K - (b.heat.positions[r]?.film_K ?? 0)));
  });
  let flows = Math.abs(a.air.massFlow_kgPerS / b.air.massFlow_kgPerS - 1);
  a.air.passages.forEach(({ massFlow_kgPerS }, i) => {
    const off = massFlow_kgPerS - (b.air.passages[i]?.massFlow_kgPerS ?? 0);
    flows = Math.max(flows, Math.abs(off / b.air.massFlow_kgPerS));
  });
  return { films_K, flows };
}

/** @returns `null` where neither way has an answer, for the same reason */
function bothWays(
  quick: (other: SystemInput) => ReturnType<typeof solveSystem>,
  other: SystemInput,
  run: Run,
) {
  const [a, b] = [quick(other), solveSystem(other, run)];
  if (a.ok && b.ok) return apart(a, b);
  expect(a).toEqual(b);
  return null;
}

describe.each(examples)(
  '75 neighbours of $id, three dozen inputs moved by up to 4 per cent',
  ({ design }) => {
    const input = toCore(design);

    test('have the answer of the full way, to a microkelvin and a billionth of the flow', () => {
      const quick = nearbySolver(input);
      fc.assert(
        fc.property(arbitraryShares, (shares) => {
          const found = bothWays(quick, neighbourOf(input, shares), ordinaryRun);
          expect(found?.films_K).toBeLessThan(1e-6);
          expect(found?.flows).toBeLessThan(1e-9);
        }),
        { seed, numRuns: 75 },
      );
    });

    test('and with the fans stopped, as closely as these settle at all', () => {
      const quick = nearbySolver(input, fansStopped);
      fc.assert(
        fc.property(arbitraryShares, (shares) => {
          const found = bothWays(quick, neighbourOf(input, shares), fansStopped);
          expect(found?.films_K).toBeLessThan(2e-5); // the full way stops at what it takes for 1e-6 K
          expect(found?.flows).toBeLessThan(1e-6);
        }),
        { seed, numRuns: 25 },
      );
    });
  },
);

test('neighbours of any box of a workshop have its answer too, hot and slow ones to a tenth of a millikelvin', () => {
  let compared = 0;
  fc.assert(
    fc.property(arbitraryDesign('usual'), arbitraryShares, (design, shares) => {
      const run = { ...ordinaryRun, pulses: false };
      const input = toCore(design);
      const found = bothWays(nearbySolver(input, run), neighbourOf(input, shares), run);
      if (!found) return;
      compared++;
      expect(found.films_K).toBeLessThan(1e-4);
      expect(found.flows).toBeLessThan(1e-6);
    }),
    { seed, numRuns: 400 },
  );
  expect(compared).toBeGreaterThan(300);
});
