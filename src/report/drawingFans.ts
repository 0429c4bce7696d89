import type { Design } from '../model/design.ts';

/** One fan as drawn: u of its outer face, v of its axis across the row, 0 in the middle of the box. */
export interface PlacedFan {
  readonly place: 'first' | 'beside' | 'behind';
  readonly u_m: number;
  readonly v_m: number;
  readonly frame_m: number;
  readonly opening_m: number;
  readonly hub_m: number;
}

export interface FanPlaces {
  readonly fans: readonly PlacedFan[];
  /** From the outer face of the first to the inner face of the last. */
  readonly depth_m: number;
  /** Where the neck-down begins: across the row, and up and down from the axis. */
  readonly across_m: readonly [from: number, to: number];
  readonly up_m: number;
}

/**
 * All fans where the core takes them to be: equal ones in lanes side by side, each lane a row; further kinds in lanes of
 * their own, or behind all lanes. Only the first kind tells its frame: others get one in proportion to their opening.
 */
export function placeFans({ fan, moreFans }: Design): FanPlaces {
  const kind = ({ opening_m, hub_m }: { opening_m: number; hub_m: number }) => ({
    frame_m: (opening_m * fan.size_m) / fan.opening_m,
    opening_m,
    hub_m,
  });
  const beside = moreFans.filter(({ place }) => place === 'beside');
  const behind = moreFans.filter(({ place }) => place === 'behind');
  const lanes = [
    ...Array.from({ length: fan.sideBySide }, () => ({
      place: 'first' as const,
      rows: fan.inARow,
      ...kind(fan),
    })),
    ...beside.map((other) => ({ place: 'beside' as const, rows: 1, ...kind(other) })),
  ];
  const fans: PlacedFan[] = [];
  let edge_m = -lanes.reduce((sum, { frame_m }) => sum + frame_m, 0) / 2;
  for (const { rows, ...lane } of lanes) {
    const v_m = edge_m + lane.frame_m / 2;
    for (let row = 0; row < rows; row++) fans.push({ ...lane, u_m: row * fan.depth_m, v_m });
    edge_m += lane.frame_m;
  }
  const blowing = behind.map((other, i) => ({
    place: 'behind' as const,
    u_m: (fan.inARow + i) * fan.depth_m,
    v_m: 0,
    ...kind(other),
  }));
  const last = blowing.at(-1);
  const ends = last === undefined ? fans : [last];
  return {
    fans: [...fans, ...blowing],
    depth_m: (fan.inARow + behind.length) * fan.depth_m,
    across_m: [
      Math.min(...ends.map((each) => each.v_m - each.opening_m / 2)),
      Math.max(...ends.map((each) => each.v_m + each.opening_m / 2)),
    ],
    up_m: Math.max(...ends.map(({ opening_m }) => opening_m)) / 2,
  };
}
