import { describe, expect, test } from 'vitest';
import { diffuserLoss } from '../../../../src/core/losses/diffuserLoss.ts';
import { neckDownLoss } from '../../../../src/core/losses/neckDownLoss.ts';
import { punchedPlateLoss } from '../../../../src/core/losses/punchedPlateLoss.ts';
import { slotDischarge } from '../../../../src/core/losses/slotDischarge.ts';
import { squareGrillLoss } from '../../../../src/core/losses/squareGrillLoss.ts';
import { wireGuardLoss } from '../../../../src/core/losses/wireGuardLoss.ts';
import { crackLoss, grilleLoss, neckLoss } from '../../../../src/core/system/pathLosses.ts';

describe('grilleLoss', () => {
  test.each([
    ['none', 0],
    ['wire', wireGuardLoss(0.6)],
    ['punched', punchedPlateLoss(0.6)],
    ['square', squareGrillLoss(0.6)],
    ['ownLoss', 7],
  ] as const)('of %s is %f', (kind, loss) => {
    expect(grilleLoss({ kind, freeShare: 0.6, loss: 7, blocked: 0 })).toBe(loss);
  });
});

describe('a grille full of dust', () => {
  test('is one with so much less free area', () => {
    for (const kind of ['wire', 'punched', 'square'] as const)
      expect(grilleLoss({ kind, freeShare: 0.8, loss: 0, blocked: 0.25 })).toBeCloseTo(
        grilleLoss({ kind, freeShare: 0.6, loss: 0, blocked: 0 }),
        12,
      );
  });

  test('with a loss of its own has every velocity in its holes greater', () => {
    expect(grilleLoss({ kind: 'ownLoss', freeShare: 0.8, loss: 3, blocked: 0.5 })).toBeCloseTo(12, 12);
  });
});

describe('neckLoss', () => {
  test('belongs to the smaller area on either side of the fan', () => {
    expect(neckLoss(3e-3, 1e-3, 0.9)).toEqual({ loss: neckDownLoss(0.9, 1 / 3), area_m2: 1e-3 });
    expect(neckLoss(1e-3, 3e-3, 0.9)).toEqual({ loss: diffuserLoss(0.9, 1 / 3), area_m2: 1e-3 });
  });

  test('is nothing to speak of where the plenum is as wide as the fan', () => {
    expect(neckLoss(1e-3, 1e-3, 0.9).loss).toBeLessThan(0.05);
  });
});

describe('crackLoss', () => {
  test('is the velocity heads that make the discharge', () => {
    expect(crackLoss(30)).toBeCloseTo(slotDischarge(30) ** -2, 12);
  });
});
