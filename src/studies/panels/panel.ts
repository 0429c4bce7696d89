/** A spot on a flat panel, from the lower left corner of its finished outline. */
export interface FlatSpot {
  readonly x_m: number;
  readonly y_m: number;
}

export type PanelKey =
  | 'floor'
  | 'side'
  | 'end'
  | 'front'
  | 'top'
  | 'fanPlate'
  | 'neckTop'
  | 'neckSide'
  | 'baffle'
  | 'collarSide'
  | 'collarEnd';

/** `hub` is scribed to centre guard and fan by; everything else is cut. */
export type CutOutKind =
  | 'fanOpening'
  | 'mouth'
  | 'hub'
  | 'fanScrew'
  | 'slot'
  | 'outlet'
  | 'wireHole'
  | 'notch'
  | 'mortise';

/** A circle, or a rectangle along the panel's edges; its place is its middle. */
export interface CutOut extends FlatSpot {
  readonly kind: CutOutKind;
  readonly round: boolean;
  /** Along x and y; both are the diameter of a circle. */
  readonly width_m: number;
  readonly height_m: number;
}

/** What a sloping panel has beside its outline, which is that of its inside face. */
export interface Taper {
  /** Lengths of the two parallel edges, and how far apart they are on the face. */
  readonly fanEdge_m: number;
  readonly bayEdge_m: number;
  readonly slant_m: number;
  /** Of the two parallel edges, and of the long ones, from square. */
  readonly endBevel_rad: number;
  readonly longBevel_rad: number;
  /** What the blank needs beyond the inside face so that the bevels can be cut. */
  readonly moreLength_m: number;
  readonly moreWidth_m: number;
}

export interface Panel {
  readonly key: PanelKey;
  readonly perBox: number;
  readonly thickness_m: number;
  /** Finished, tabs included. */
  readonly length_m: number;
  readonly width_m: number;
  /** Outline, counter-clockwise. */
  readonly corners: readonly FlatSpot[];
  readonly cutOuts: readonly CutOut[];
  readonly taper: Taper | null;
}

/** Tabs of one edge: where their middles are along the body, and how far they stand out. */
export interface Tabs {
  readonly at_m: readonly number[];
  readonly depth_m: number;
}

export const noTabs: Tabs = { at_m: [], depth_m: 0 };

export interface TabbedEdges {
  readonly bottom: Tabs;
  readonly right: Tabs;
  readonly top: Tabs;
  readonly left: Tabs;
}

const plainEdges: TabbedEdges = { bottom: noTabs, right: noTabs, top: noTabs, left: noTabs };

/** A rectangular panel, of so much body between its tabs; its cut-outs are placed on the body and moved with it. */
export function rectangularPanel(
  panel: Pick<Panel, 'key' | 'perBox' | 'thickness_m'>,
  bodyLength_m: number,
  bodyWidth_m: number,
  cutOuts: readonly CutOut[] = [],
  tabs: Partial<TabbedEdges> = {},
  tab_m = 0,
): Panel {
  const { bottom, right, top, left } = { ...plainEdges, ...tabs };
  const x0 = standsOut_m(left);
  const y0 = standsOut_m(bottom);
  const x1 = x0 + bodyLength_m;
  const y1 = y0 + bodyWidth_m;
  const half = tab_m / 2;
  const spot = (x_m: number, y_m: number): FlatSpot => ({ x_m, y_m });
  const back = ({ at_m }: Tabs) => at_m.toReversed();
  const corners = [
    spot(x0, y0),
    ...bottom.at_m.flatMap((at) => [
      spot(x0 + at - half, y0),
      spot(x0 + at - half, 0),
      spot(x0 + at + half, 0),
      spot(x0 + at + half, y0),
    ]),
    spot(x1, y0),
    ...right.at_m.flatMap((at) => [
      spot(x1, y0 + at - half),
      spot(x1 + right.depth_m, y0 + at - half),
      spot(x1 + right.depth_m, y0 + at + half),
      spot(x1, y0 + at + half),
    ]),
    spot(x1, y1),
    ...back(top).flatMap((at) => [
      spot(x0 + at + half, y1),
      spot(x0 + at + half, y1 + top.depth_m),
      spot(x0 + at - half, y1 + top.depth_m),
      spot(x0 + at - half, y1),
    ]),
    spot(x0, y1),
    ...back(left).flatMap((at) => [
      spot(x0, y0 + at + half),
      spot(0, y0 + at + half),
      spot(0, y0 + at - half),
      spot(x0, y0 + at - half),
    ]),
  ];
  return {
    ...panel,
    length_m: x1 + standsOut_m(right),
    width_m: y1 + standsOut_m(top),
    corners,
    cutOuts: cutOuts.map((cut) => ({ ...cut, x_m: cut.x_m + x0, y_m: cut.y_m + y0 })),
    taper: null,
  };
}

function standsOut_m({ at_m, depth_m }: Tabs): number {
  return at_m.length > 0 ? depth_m : 0;
}

export function rectangle(
  kind: CutOutKind,
  x_m: number,
  y_m: number,
  width_m: number,
  height_m: number,
): CutOut {
  return { kind, round: false, x_m, y_m, width_m, height_m };
}

export function circle(kind: CutOutKind, x_m: number, y_m: number, diameter_m: number): CutOut {
  return { kind, round: true, x_m, y_m, width_m: diameter_m, height_m: diameter_m };
}

/** Size of the piece to saw or shear: with the allowance at every edge, and what the bevels need. */
export function roughSize(
  { length_m, width_m, taper }: Panel,
  edge_m: number,
): { readonly length_m: number; readonly width_m: number } {
  return {
    length_m: length_m + 2 * edge_m + (taper?.moreLength_m ?? 0),
    width_m: width_m + 2 * edge_m + (taper?.moreWidth_m ?? 0),
  };
}
