import type { Design } from '../../src/model/design.ts';
import type { Panel, PanelKey, Taper } from '../../src/studies/panels/panel.ts';

/** Along the row from the inside of the front wall, across from one side wall, up from the floor. */
export type Point = readonly [u_m: number, y_m: number, z_m: number];

export interface Block {
  readonly name: string;
  readonly low: Point;
  readonly high: Point;
}

/** Where the air is: a room to look from, and the edges that it has with its neighbours. */
interface Room {
  readonly middle: Point;
  readonly seams: readonly (readonly [Point, Point])[];
}

/** A box put together from the pieces of its list, butted: sizes from the list, places from the design alone. */
export interface AssembledBox {
  readonly blocks: readonly Block[];
  /** Whether a sloping panel is at a point. */
  readonly slopes: readonly ((point: Point) => boolean)[];
  readonly rooms: readonly Room[];
}

const slack_m = 1e-9;

export function pieceOf(panels: readonly Panel[], key: PanelKey): Panel {
  const found = panels.find((panel) => panel.key === key);
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
}

/** For equal fans side by side, a baffle with its collar, and a neck-down that may be none. */
export function assembleBox({ box, plenum, fan }: Design, panels: readonly Panel[]): AssembledBox {
  const { sheet_m: t, length_m: L, width_m: W } = box;
  const { height_m: H, neckLength_m: neck_m } = plenum;
  const [floor, side, end, front, top, plate] = (
    ['floor', 'side', 'end', 'front', 'top', 'fanPlate'] as const
  ).map((key) => pieceOf(panels, key)) as [Panel, Panel, Panel, Panel, Panel, Panel];
  const high = side.width_m;
  const from = -t - neck_m;
  const block = (name: string, low: Point, size: Point): Block => ({
    name,
    low,
    high: [low[0] + size[0], low[1] + size[1], low[2] + size[2]],
  });
  const blocks = [
    block('floor', [-t, -t, -t], [floor.length_m, floor.width_m, t]),
    block('one side', [-t, -t, 0], [side.length_m, t, side.width_m]),
    block('other side', [-t, W, 0], [side.length_m, t, side.width_m]),
    block('end', [L, 0, 0], [t, end.length_m, end.width_m]),
    block('front', [-t, 0, H], [t, front.length_m, front.width_m]),
    block('top', [-t, -t, high], [top.length_m, top.width_m, t]),
    block(
      'plate',
      [from - t, W / 2 - plate.length_m / 2, H / 2 - plate.width_m / 2],
      [t, plate.length_m, plate.width_m],
    ),
  ];
  const bay: Room = { middle: [L / 2, W / 2, high / 2], seams: edgesOf([0, 0, 0], [L, W, high]) };
  const throat: Room = { middle: [-t / 2, W / 2, H / 2], seams: edgesOf([-t, 0, 0], [0, W, H]) };
  if (neck_m === 0) return { blocks, slopes: [], rooms: [bay, throat] };

  const wide = (fan.sideBySide - 1) * fan.size_m + fan.opening_m;
  const tall = fan.opening_m;
  /** A pair of panels over and under the axis, or on its two sides. */
  const pair =
    (
      taper: Taper,
      fanHalf: number,
      bayHalf: number,
      off: (p: Point) => number,
      along: (p: Point) => number,
    ) =>
    (point: Point): boolean => {
      const a = point[0] - from;
      const rise = (fanHalf - bayHalf) / neck_m;
      const run = taper.slant_m / Math.hypot(1, rise);
      const depth = (off(point) - (fanHalf - a * rise)) / Math.hypot(1, rise);
      const half = (taper.fanEdge_m + ((taper.bayEdge_m - taper.fanEdge_m) * a) / run) / 2;
      return (
        a >= -slack_m &&
        a <= run + slack_m &&
        depth >= -slack_m &&
        depth <= t + slack_m &&
        along(point) <= half + slack_m
      );
    };
  const acrossAxis = ([, y]: Point) => Math.abs(y - W / 2);
  const overAxis = ([, , z]: Point) => Math.abs(z - H / 2);
  const upper = pieceOf(panels, 'neckTop').taper;
  const beside = pieceOf(panels, 'neckSide').taper;
  if (!upper || !beside) throw new Error('a sloping panel without its slope');
  const corner = (u: number, w: number, h: number, y: number, z: number): Point => [
    u,
    W / 2 + (y * w) / 2,
    H / 2 + (z * h) / 2,
  ];
  const signs = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  const around = (u: number, w: number, h: number) =>
    signs.map(([y, z], i) => {
      const [y2, z2] = signs[(i + 1) % 4] as readonly [number, number];
      return [corner(u, w, h, y, z), corner(u, w, h, y2, z2)] as const;
    });
  const cone: Room = {
    middle: [from + neck_m / 2, W / 2, H / 2],
    seams: [
      ...signs.map(([y, z]) => [corner(from, wide, tall, y, z), corner(-t, W, H, y, z)] as const),
      ...around(from, wide, tall),
      ...around(-t, W, H),
    ],
  };
  return {
    blocks,
    slopes: [
      pair(upper, tall / 2, H / 2, overAxis, acrossAxis),
      pair(beside, wide / 2, W / 2, acrossAxis, overAxis),
    ],
    rooms: [bay, throat, cone],
  };
}

function edgesOf(low: Point, high: Point): (readonly [Point, Point])[] {
  const corner = (bits: number): Point => [
    bits & 1 ? high[0] : low[0],
    bits & 2 ? high[1] : low[1],
    bits & 4 ? high[2] : low[2],
  ];
  return [1, 2, 4].flatMap((axis) =>
    [0, 1, 2, 3, 4, 5, 6, 7]
      .filter((bits) => !(bits & axis))
      .map((bits) => [corner(bits), corner(bits | axis)] as const),
  );
}

function isSolid({ blocks, slopes }: AssembledBox, point: Point): boolean {
  const between = (at: number, low: number, high: number) => at >= low - slack_m && at <= high + slack_m;
  return (
    blocks.some(
      ({ low, high }) =>
        between(point[0], low[0], high[0]) &&
        between(point[1], low[1], high[1]) &&
        between(point[2], low[2], high[2]),
    ) || slopes.some((holds) => holds(point))
  );
}

/** Whether a look from one point through another meets sheet before it is out of the box. Openings count as sheet. */
export function isStopped(
  box: AssembledBox,
  from: Point,
  through: Point,
  step_m: number,
  reach_m: number,
): boolean {
  const way = through.map((at, axis) => at - (from[axis] as number));
  const long = Math.hypot(...way);
  for (let at = 0; at < reach_m; at += step_m) {
    const share = at / long;
    if (isSolid(box, from.map((start, axis) => start + share * (way[axis] as number)) as unknown as Point))
      return true;
  }
  return false;
}

/** Room that two blocks both take, m³. */
export function shared_m3(one: Block, other: Block): number {
  return [0, 1, 2].reduce((volume, axis) => {
    const from = Math.max(one.low[axis] as number, other.low[axis] as number);
    const to = Math.min(one.high[axis] as number, other.high[axis] as number);
    return volume * Math.max(0, to - from);
  }, 1);
}
