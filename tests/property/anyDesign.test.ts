import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fansStopped, ordinaryRun, type Run } from '../../src/core/system/input.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { toCore } from '../../src/model/toCore.ts';
import { arbitraryDesign, type Flavour } from '../helpers/arbitraryDesign.ts';

/** Path of the first number that is not finite, or `null`. */
function notFinite(value: unknown, path = 'outcome'): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${path} = ${value}`;
  if (value === null || typeof value !== 'object') return null;
  for (const [key, inner] of Object.entries(value)) {
    const found = notFinite(inner, `${path}.${key}`);
    if (found) return found;
  }
  return null;
}

function solveMany(flavour: Flavour, run: Run, numRuns: number) {
  const reasons = new Map<string, number>();
  fc.assert(
    fc.property(arbitraryDesign(flavour), (design) => {
      const outcome = solveSystem(toCore(design), run);
      const key = outcome.ok ? 'answer' : outcome.reason;
      reasons.set(key, (reasons.get(key) ?? 0) + 1);
      expect(notFinite(outcome)).toBeNull();
      if (outcome.ok) {
        expect(outcome.balance.air).toBeLessThan(1e-9);
        // What the form takes at its very ends heats a trickle of air by hundreds of kelvin: there rounding shows.
        const inwards_W = outcome.heat.total_W + outcome.heat.fan_W;
        const counts_W = Math.max(inwards_W, 0.01); // settled to 1 nK, walls of 0.1 W/K still pass 0.1 nW: of no load at all that is much
        const imbalance_W = outcome.balance.heat * inwards_W;
        expect(imbalance_W).toBeLessThan((flavour === 'hard' ? 1e-8 : 1e-9) * counts_W);
        if (!outcome.air.running) return;
        // The flow that everything was computed at is the intersection that is said to be used.
        const used = outcome.air.intersections.find((point) => point.used);
        expect(Math.abs((used?.flow_m3PerS ?? 0) / outcome.air.flow_m3PerS - 1)).toBeLessThan(1e-6);
        if (flavour === 'hard') return;
        // Pressures meet: what the stages take is what fan and draught give.
        const { stages, fanPressure_Pa, draught_Pa, shutOff_Pa } = outcome.air;
        const taken_Pa = stages.reduce((sum, { dp_Pa }) => sum + dp_Pa, 0);
        expect(Math.abs(taken_Pa - fanPressure_Pa - draught_Pa)).toBeLessThan(1e-5 * shutOff_Pa);
      }
    }),
    { seed: 20261125, numRuns, endOnFailure: true },
  );
  return (reason: string) => (reasons.get(reason) ?? 0) / numRuns;
}

describe('20,000 random valid designs', () => {
  test('anything the form takes has an answer or a reason, every number finite', () => {
    const share = solveMany('hard', ordinaryRun, 5_000);
    expect(share('notConverged')).toBeLessThan(0.01);
  }, 180_000);

  test('so it does with its fans stopped', () => {
    for (const flavour of ['hard', 'usual'] as const)
      expect(solveMany(flavour, fansStopped, 5_000)('notConverged')).toBeLessThan(0.006);
  }, 180_000);

  test('anything a workshop would build has an answer or a reason of physics', () => {
    const share = solveMany('usual', ordinaryRun, 5_000);
    expect(share('answer')).toBeGreaterThan(0.7); // the rest has no sink on any side, or no air to speak of at its watts
    expect(share('notConverged')).toBeLessThan(0.005);
  }, 180_000);
});
