import type { Design } from '../../model/design.ts';

/** Frame and distance of the screws of square fans, in metres: common practice, no source. */
const usualFrames: readonly (readonly [frame_m: number, pitch_m: number])[] = [
  [0.025, 0.02],
  [0.03, 0.024],
  [0.035, 0.029],
  [0.04, 0.032],
  [0.045, 0.037],
  [0.05, 0.04],
  [0.06, 0.05],
  [0.07, 0.06],
  [0.08, 0.0715],
  [0.092, 0.0825],
  [0.12, 0.105],
  [0.14, 0.1245],
];
/** A frame this near to a usual one is that one. */
const sameFrame_m = 0.001;

/** Fans beside one another; those behind them stand on the same screws and cut nothing. */
export interface FanLane {
  readonly opening_m: number;
  readonly hub_m: number;
  readonly frame_m: number;
  /** Its axis, across the box from the middle. */
  readonly across_m: number;
  /** Between neighbouring screws; `null` where neither the design nor practice knows it. */
  readonly pitch_m: number | null;
  readonly pitchFrom: 'design' | 'practice';
}

/**
 * Fans side by side across the box, the first kind and then the others. A further fan has no frame of its own in the
 * design: it is taken to be as wide as the first where its opening is the same, else to have the same rim.
 */
export function fanLanes({ fan, moreFans, cutting }: Design): FanLane[] {
  const rim_m = fan.size_m - fan.opening_m;
  const first = Array.from({ length: fan.sideBySide }, () => ({ ...fan, frame_m: fan.size_m, own: true }));
  const others = moreFans
    .filter(({ place }) => place === 'beside')
    .map((other) => ({ ...other, frame_m: other.opening_m + rim_m, own: other.opening_m === fan.opening_m }));
  const all = [...first, ...others];
  const wide_m = all.reduce((sum, { frame_m }) => sum + frame_m, 0);
  let edge_m = -wide_m / 2;
  return all.map(({ opening_m, hub_m, frame_m, own }) => {
    const across_m = edge_m + frame_m / 2;
    edge_m += frame_m;
    const told = own && cutting.fanPitch_m > 0;
    return {
      opening_m,
      hub_m,
      frame_m,
      across_m,
      pitch_m: told ? cutting.fanPitch_m : usualPitch_m(frame_m),
      pitchFrom: told ? 'design' : 'practice',
    };
  });
}

/** @returns `null` for a frame that is none of the usual ones */
export function usualPitch_m(frame_m: number): number | null {
  const found = usualFrames.find(([usual_m]) => Math.abs(usual_m - frame_m) <= sameFrame_m);
  return found?.[1] ?? null;
}
