import type { Design } from '../../model/design.ts';
import { type CutOut, noTabs, rectangle, type Tabs } from './panel.ts';

/** A tab for every so many lengths of its own; an edge shorter than twice a tab has none. */
const spacing = 3;
const mostTabs = 40;

export interface Joints {
  readonly slotted: boolean;
  readonly tab_m: number;
  readonly fit_m: number;
}

/** Play where things slide into one another; tabs only where the design asks for them. */
export function jointsOf({ cutting }: Design): Joints {
  const slotted = cutting.joint === 'slotted';
  return { slotted, tab_m: slotted ? cutting.tab_m : 0, fit_m: cutting.fit_m };
}

/** Tabs evenly along an edge, none at its very ends. @param depth_m thickness of the sheet that takes them */
export function tabsAlong(edge_m: number, depth_m: number, { slotted, tab_m }: Joints): Tabs {
  if (!slotted || edge_m < 2 * tab_m) return noTabs;
  const count = Math.min(mostTabs, Math.max(1, Math.floor(edge_m / (spacing * tab_m))));
  return { at_m: Array.from({ length: count }, (_, i) => (edge_m * (i + 0.5)) / count), depth_m };
}

/** Where a panel takes the tabs of another at its own edge, open to the outside. */
export type NotchedEdge = 'bottom' | 'right' | 'top' | 'left';

/** @param from_m where the body that carries the tabs begins along this edge */
export function notches(
  tabs: Tabs,
  edge: NotchedEdge,
  panel: { readonly length_m: number; readonly width_m: number },
  from_m: number,
  { tab_m, fit_m }: Joints,
): CutOut[] {
  const long_m = tab_m + 2 * fit_m;
  const deep_m = tabs.depth_m + fit_m;
  return tabs.at_m.map((at_m) => {
    const along_m = from_m + at_m;
    if (edge === 'bottom') return rectangle('notch', along_m, deep_m / 2, long_m, deep_m);
    if (edge === 'top') return rectangle('notch', along_m, panel.width_m - deep_m / 2, long_m, deep_m);
    if (edge === 'left') return rectangle('notch', deep_m / 2, along_m, deep_m, long_m);
    return rectangle('notch', panel.length_m - deep_m / 2, along_m, deep_m, long_m);
  });
}
