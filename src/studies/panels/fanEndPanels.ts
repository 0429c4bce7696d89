import type { Design } from '../../model/design.ts';
import type { BoxMeasures, NeckMeasures } from './boxMeasures.ts';
import { type CutOut, circle, type Panel, rectangle, rectangularPanel } from './panel.ts';

/**
 * The plate that the fans are screwed to, and the four sloping panels between it and the mouth of the plenum: top and
 * bottom alike cover the edges of both sides. Without a neck-down the plate closes the mouth itself.
 */
export function fanEndPanels(design: Design, box: BoxMeasures): Panel[] {
  return [fanPlate(design, box), ...(box.neck ? neckPanels(box, box.neck) : [])];
}

function fanPlate(design: Design, box: BoxMeasures): Panel {
  const { neck, wall_m } = box;
  // What lands on the plate: the neck-down as a cut square to the axis shows it, or the walls round the mouth.
  const landWidth_m = neck
    ? box.fanWidth_m + (2 * wall_m) / Math.cos(neck.sideSlope_rad)
    : box.width_m + 2 * wall_m;
  const landHeight_m = neck
    ? box.fanHeight_m + (2 * wall_m) / Math.cos(neck.topSlope_rad)
    : box.plenum_m + 2 * wall_m;
  const width_m = Math.max(box.framesWidth_m, landWidth_m);
  const height_m = Math.max(box.framesHeight_m, landHeight_m);
  const panel = { key: 'fanPlate', perBox: 1, thickness_m: wall_m } as const;
  return rectangularPanel(panel, width_m, height_m, [
    ...openings(box, width_m / 2, height_m / 2),
    ...box.lanes.flatMap(({ across_m, hub_m, pitch_m }) => {
      const x_m = width_m / 2 + across_m;
      const y_m = height_m / 2;
      const half_m = (pitch_m ?? 0) / 2;
      const hole_m = design.cutting.fanHole_m;
      const screws =
        pitch_m === null
          ? []
          : [
              circle('fanScrew', x_m - half_m, y_m - half_m, hole_m),
              circle('fanScrew', x_m + half_m, y_m - half_m, hole_m),
              circle('fanScrew', x_m - half_m, y_m + half_m, hole_m),
              circle('fanScrew', x_m + half_m, y_m + half_m, hole_m),
            ];
      return [...(hub_m > 0 ? [circle('hub', x_m, y_m, hub_m)] : []), ...screws];
    }),
  ]);
}

/** Round; but without a neck-down no part reaches past the mouth behind. What a frame covers beyond a round is closed. */
function openings(box: BoxMeasures, x_m: number, y_m: number): CutOut[] {
  if (box.neck || fitsMouth(box))
    return box.lanes.map(({ across_m, opening_m }) => circle('fanOpening', x_m + across_m, y_m, opening_m));
  const half_m = box.width_m / 2;
  return box.lanes.flatMap(({ across_m, opening_m }) => {
    const from_m = Math.max(-half_m, across_m - opening_m / 2);
    const to_m = Math.min(half_m, across_m + opening_m / 2);
    const high_m = Math.min(box.plenum_m, opening_m);
    return to_m > from_m ? [rectangle('mouth', x_m + (from_m + to_m) / 2, y_m, to_m - from_m, high_m)] : [];
  });
}

export function fitsMouth({ width_m, plenum_m, fanWidth_m, fanHeight_m }: BoxMeasures): boolean {
  return fanWidth_m <= width_m * (1 + 1e-9) && fanHeight_m <= plenum_m * (1 + 1e-9);
}

function neckPanels(box: BoxMeasures, neck: NeckMeasures): Panel[] {
  const { wall_m } = box;
  // Measured along the edge, a panel that slopes is thicker.
  const covered_m = (2 * wall_m) / Math.cos(neck.sideSlope_rad);
  const taper = (key: 'neckTop' | 'neckSide', fanEdge_m: number, bayEdge_m: number): Panel => {
    const isTop = key === 'neckTop';
    const slant_m = isTop ? neck.topSlant_m : neck.sideSlant_m;
    const slope_rad = isTop ? neck.topSlope_rad : neck.sideSlope_rad;
    const widest_m = Math.max(fanEdge_m, bayEdge_m);
    const edge = (x_m: number, long_m: number) =>
      [(widest_m - long_m) / 2, (widest_m + long_m) / 2].map((y_m) => ({ x_m, y_m }));
    const [fanLow, fanHigh] = edge(0, fanEdge_m);
    const [bayLow, bayHigh] = edge(slant_m, bayEdge_m);
    return {
      key,
      perBox: 2,
      thickness_m: wall_m,
      length_m: slant_m,
      width_m: widest_m,
      corners: [fanLow, bayLow, bayHigh, fanHigh].filter((spot) => spot !== undefined),
      cutOuts: [],
      taper: {
        fanEdge_m,
        bayEdge_m,
        slant_m,
        endBevel_rad: Math.abs(slope_rad),
        // The covering panel's long edges are dressed flush with the sides; the sides' edges lie against it.
        longBevel_rad: Math.abs(neck.corner_rad),
        moreLength_m: wall_m * Math.tan(Math.abs(slope_rad)),
        // Where the box flares one way and narrows the other, the outside face is the wider one.
        moreWidth_m: 2 * wall_m * Math.tan(Math.max(0, -neck.corner_rad)),
      },
    };
  };
  return [
    taper('neckTop', box.fanWidth_m + covered_m, box.width_m + covered_m),
    taper('neckSide', box.fanHeight_m, box.plenum_m),
  ];
}
