import type { CutOutKind, Panel, PanelKey } from './panel.ts';

/** Up to here a hole is drilled, not milled. */
const drilled: readonly CutOutKind[] = ['fanScrew', 'wireHole', 'hub'];

/** One kind of milled feature in one panel, and what an end mill does to it. */
export interface MilledFeature {
  readonly panel: PanelKey;
  readonly kind: CutOutKind;
  /** The widest mill that still cuts it: its narrowest clear width. */
  readonly widest_m: number;
  /** What the workshop's mill leaves in an inner corner; 0 for a round. */
  readonly corner_m: number;
  /** Share of its area that the rounded corners take. */
  readonly cornerShare: number;
  readonly fits: boolean;
}

/** Every kind of milled feature, the narrowest first. */
export function milledFeatures(panels: readonly Panel[], cutter_m: number): MilledFeature[] {
  const found = new Map<string, MilledFeature>();
  for (const { key, cutOuts, length_m } of panels)
    for (const { kind, round, x_m, width_m, height_m } of cutOuts) {
      if (drilled.includes(kind)) continue;
      // A notch is open at the panel's edge: only its length along the edge bounds the mill.
      const atSide = x_m - width_m / 2 <= 1e-6 || x_m + width_m / 2 >= length_m - 1e-6;
      const widest_m = kind === 'notch' ? (atSide ? height_m : width_m) : Math.min(width_m, height_m);
      const before = found.get(`${key} ${kind}`);
      if (before && before.widest_m <= widest_m) continue;
      const fits = cutter_m <= widest_m * (1 + 1e-9);
      const corner_m = round || !fits ? 0 : cutter_m / 2;
      found.set(`${key} ${kind}`, {
        panel: key,
        kind,
        widest_m,
        corner_m,
        cornerShare:
          ((kind === 'notch' ? 0.5 : 1) * (4 - Math.PI) * corner_m * corner_m) / (width_m * height_m),
        fits,
      });
    }
  return [...found.values()].sort((a, b) => a.widest_m - b.widest_m);
}
