import type { Design } from '../../model/design.ts';
import type { FanAtHand } from './fanChoice.ts';

/** Frames that axial fans are usually sold in; common practice, no source. */
const frames_m = [0.025, 0.03, 0.04, 0.05, 0.06, 0.07, 0.08, 0.092, 0.12, 0.14, 0.172, 0.2, 0.254];

/** Every kind of fan entered in these designs, each once; a further fan of a design has no frame of its own and gets a usual one. */
export function fansAtHand(designs: readonly Design[]): FanAtHand[] {
  const found = new Map<string, FanAtHand>();
  for (const { fan, moreFans } of designs) {
    const { sideBySide, inARow, inletSpace_m, supplySag, speedLoss, ...first } = fan;
    const others = moreFans.map(({ place, ...other }) => ({ ...other, ...frameFor(other.opening_m, fan) }));
    for (const each of [first, ...others]) {
      const kind = { ...each, supply_V: each.rated_V };
      const key = JSON.stringify(Object.entries(kind).sort(([a], [b]) => (a < b ? -1 : 1)));
      if (!found.has(key)) found.set(key, kind);
    }
  }
  return [...found.values()];
}

function frameFor(
  opening_m: number,
  { size_m, depth_m }: Design['fan'],
): { size_m: number; depth_m: number } {
  const usual_m = frames_m.find((frame_m) => frame_m >= opening_m) ?? opening_m;
  return { size_m: opening_m <= size_m && size_m <= usual_m ? size_m : usual_m, depth_m };
}
