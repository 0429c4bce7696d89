import type { PassageKind, Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { Spot, Stream } from './drawing.ts';
import type { Layout } from './drawingLayout.ts';

/** Where a stream leaves the plenum, and how far up it goes. */
interface Branch {
  readonly kind: PassageKind;
  readonly index: number;
  readonly share: number;
  readonly u_m: number;
  readonly top_m: number;
}

/**
 * The air as ribbons: one trunk from the fan, of which a ribbon peels off for every passage, nearest first.
 * Air past the sides of the row cannot be seen in a section along it; it is drawn with the air round its ends.
 */
export function sectionStreams(design: Design, layout: Layout, solved: Solved): Stream[] {
  const { plenum } = design;
  const { zMax_m, trunk_m } = layout;
  const branches = branchesOf(design, layout, solved).sort((a, b) => a.u_m - b.u_m);
  let above_m = plenum.height_m / 2 + trunk_m / 2;
  return branches.map((branch, order) => {
    const width_m = Math.abs(branch.share) * trunk_m;
    const z_m = above_m - width_m / 2;
    above_m -= width_m;
    const v = zMax_m - z_m;
    const points: Spot[] = [
      { u_m: -0.6 * design.fan.depth_m, v_m: v },
      { u_m: branch.u_m, v_m: v },
      { u_m: branch.u_m, v_m: zMax_m - branch.top_m },
    ];
    return {
      id: `${branch.kind}-${branch.index}-${order}`,
      kind: branch.kind,
      index: branch.index,
      share: branch.share,
      width_m,
      points: branch.share < 0 ? points.reverse() : points,
    };
  });
}

function branchesOf(design: Design, layout: Layout, solved: Solved): Branch[] {
  const { bank, rowStart_m, top_m, bankTop_m, bayStart_m, bayEnd_m, baffleTop_m } = layout;
  const over_m = top_m + 0.35 * design.sink.length_m;
  const { passages, share } = solved.air;
  const centres = rowCentres(layout);
  const fins = passages
    .filter((passage) => passage.kind === 'fins')
    .map(
      (p): Branch => ({
        kind: 'fins',
        index: p.index,
        share: p.share,
        u_m: centres.sink[p.index] ?? rowStart_m,
        top_m: over_m,
      }),
    );
  const between = centres.stack.map(
    (u_m, index): Branch => ({
      kind: 'between',
      index,
      share: share.between / centres.stack.length,
      u_m,
      top_m: bankTop_m,
    }),
  );
  const past = (kind: 'side' | 'end', into: number) => {
    const away_m = into * Math.max(bank.end_m, 0.0004);
    return [rowStart_m - away_m, rowStart_m + bank.row_m + away_m].map(
      (u_m, index): Branch => ({ kind, index, share: share[kind] / 2, u_m, top_m: bankTop_m }),
    );
  };
  const seat_m = 0.3 * design.box.sheet_m;
  const leak: Branch[] = [bayStart_m + seat_m, bayEnd_m - seat_m].map((u_m, index) => ({
    kind: 'leak',
    index,
    share: share.leak / 2,
    u_m,
    top_m: baffleTop_m + 0.15 * design.sink.length_m,
  }));
  return [...fins, ...between, ...past('side', 0.65), ...past('end', 0.2), ...leak].filter(
    (branch) => Math.abs(branch.share) > 1e-6,
  );
}

/** u of the middle of every sink's fins and of every resistor's stack. */
function rowCentres({ bank, rowStart_m }: Layout): { sink: number[]; stack: number[] } {
  const sink: number[] = [];
  const stack: number[] = [];
  let u = rowStart_m;
  for (let s = 0; s < bank.sinkCount; s++) {
    const depth = bank.sinkDepth_m[s] ?? 0;
    sink.push(u + depth / 2);
    u += depth;
    const thick = bank.stack_m[s];
    if (thick === undefined) continue;
    stack.push(u + thick / 2);
    u += thick;
  }
  return { sink, stack };
}
