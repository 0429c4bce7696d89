import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { channelExitDucted } from '../../src/core/losses/channelExitDucted.ts';
import { diffuserLoss } from '../../src/core/losses/diffuserLoss.ts';
import { finEntranceLoss } from '../../src/core/losses/finEntranceLoss.ts';
import { neckDownLoss } from '../../src/core/losses/neckDownLoss.ts';
import { punchedPlateLoss } from '../../src/core/losses/punchedPlateLoss.ts';
import { slotDischarge } from '../../src/core/losses/slotDischarge.ts';
import { squareGrillLoss } from '../../src/core/losses/squareGrillLoss.ts';
import { suddenContraction } from '../../src/core/losses/suddenContraction.ts';
import { suddenExpansion } from '../../src/core/losses/suddenExpansion.ts';
import { coreEntranceLoss, venaContracta } from '../../src/core/losses/venaContracta.ts';
import { wireGuardLoss } from '../../src/core/losses/wireGuardLoss.ts';

const runs = { seed: 20261125, numRuns: 300 };
const shares = (low: number, high = 1) => fc.double({ min: low, max: high, noNaN: true });
const angles = fc.double({ min: 0, max: Math.PI, noNaN: true });

describe('losses', () => {
  test('a wider opening never costs more', () => {
    const openings = [
      wireGuardLoss,
      punchedPlateLoss,
      squareGrillLoss,
      suddenExpansion,
      suddenContraction,
      finEntranceLoss,
      (sigma: number) => coreEntranceLoss(sigma, 1),
    ];
    fc.assert(
      fc.property(shares(0.02), shares(0), (free, part) => {
        const wider = free + (1 - free) * part;
        for (const loss of openings) {
          const here = loss(free);
          expect(Number.isFinite(here)).toBe(true);
          expect(here).toBeGreaterThanOrEqual(-1e-9);
          expect(loss(wider)).toBeLessThanOrEqual(here + 1e-9);
        }
      }),
      runs,
    );
  });

  test('cones cost at least nothing, and never more than their steepest', () => {
    fc.assert(
      fc.property(angles, shares(0.05), (angle, ratio) => {
        const neck = neckDownLoss(angle, ratio);
        const diffuser = diffuserLoss(angle, ratio);
        expect(neck).toBeGreaterThanOrEqual(0);
        expect(neck).toBeLessThanOrEqual(neckDownLoss(Math.PI, ratio) + 1e-12);
        expect(diffuser).toBeGreaterThanOrEqual(0);
        expect(diffuser).toBeLessThanOrEqual(1.21 * suddenExpansion(ratio)); // table: 0.373 over (1 − 4/9)²
      }),
      runs,
    );
  });

  test('a jet is never wider than its opening nor narrower than from an endless wall', () => {
    fc.assert(
      fc.property(shares(0), (sigma) => {
        const jet = venaContracta(sigma);
        expect(jet).toBeGreaterThanOrEqual(Math.PI / (Math.PI + 2) - 1e-9);
        expect(jet).toBeLessThanOrEqual(1);
      }),
      runs,
    );
  });

  test('what a ducted exit wins back never exceeds what its profile carries', () => {
    fc.assert(
      fc.property(shares(0), shares(1, 1.4), (sigma, momentum) => {
        const loss = channelExitDucted(sigma, momentum);
        expect(loss).toBeLessThanOrEqual(1);
        expect(loss).toBeGreaterThanOrEqual(suddenExpansion(sigma) - 2 * (momentum - 1) - 1e-12);
      }),
      runs,
    );
  });

  test('a deeper crack never lets less through', () => {
    fc.assert(
      fc.property(shares(0, 6), shares(0, 6), (depth, more) => {
        expect(slotDischarge(depth + more)).toBeGreaterThanOrEqual(slotDischarge(depth));
      }),
      runs,
    );
  });
});
