import { diffuserLoss } from '../losses/diffuserLoss.ts';
import { neckDownLoss } from '../losses/neckDownLoss.ts';
import { punchedPlateLoss } from '../losses/punchedPlateLoss.ts';
import { slotDischarge } from '../losses/slotDischarge.ts';
import { squareGrillLoss } from '../losses/squareGrillLoss.ts';
import { wireGuardLoss } from '../losses/wireGuardLoss.ts';
import type { GrilleInput } from './input.ts';

/** Loss of a guard or grille on the velocity in its whole opening, as dust has left it. */
export function grilleLoss({ kind, freeShare, loss, blocked }: GrilleInput): number {
  const free = freeShare * (1 - blocked);
  switch (kind) {
    case 'none':
      return 0;
    case 'wire':
      return wireGuardLoss(free);
    case 'punched':
      return punchedPlateLoss(free);
    case 'square':
      return squareGrillLoss(free);
    case 'ownLoss':
      // The same holes on less area: every velocity in them grows.
      return loss / ((1 - blocked) * (1 - blocked));
  }
}

/** From the fan's opening to the plenum: a neck-down or a widening, with the area that its loss belongs to. */
export function neckLoss(
  fanArea_m2: number,
  plenumArea_m2: number,
  angle_rad: number,
): { loss: number; area_m2: number } {
  return plenumArea_m2 < fanArea_m2
    ? { loss: neckDownLoss(angle_rad, plenumArea_m2 / fanArea_m2), area_m2: plenumArea_m2 }
    : { loss: diffuserLoss(angle_rad, fanArea_m2 / plenumArea_m2), area_m2: fanArea_m2 };
}

/** Velocity heads lost in a crack, on the velocity in its own area. */
export function crackLoss(lengthOverGap: number): number {
  const discharge = slotDischarge(lengthOverGap);
  return 1 / (discharge * discharge);
}
