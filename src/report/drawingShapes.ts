import type { Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { Box, DrawingShape, PartId, ShapeRole, Spot } from './drawing.ts';
import type { PlacedFan } from './drawingFans.ts';
import type { Layout } from './drawingLayout.ts';
import type { UnitSystem } from './types.ts';
import { temperature as temperatureWords } from './words.ts';

type Extra = Partial<Omit<DrawingShape, 'part' | 'role' | 'box'>>;

/** Thinner things than this would vanish on paper. */
const visible_m = 0.0006;

function shape(part: PartId, role: ShapeRole, box: Box, extra: Extra = {}): DrawingShape {
  return {
    part,
    role,
    box,
    index: null,
    corners: null,
    temperature: null,
    warmth: null,
    off: false,
    ...extra,
  };
}

function rect(u_m: number, v_m: number, width_m: number, height_m: number): Box {
  return { u_m, v_m, width_m, height_m };
}

function polygon(corners: readonly Spot[]): { box: Box; corners: readonly Spot[] } {
  const us = corners.map((c) => c.u_m);
  const vs = corners.map((c) => c.v_m);
  const [left, top] = [Math.min(...us), Math.min(...vs)];
  return { box: rect(left, top, Math.max(...us) - left, Math.max(...vs) - top), corners };
}

/** Section along the row: u along the row, v downward from the top. */
export function sectionShapes(
  design: Design,
  layout: Layout,
  solved: Solved | null,
  system: UnitSystem,
): DrawingShape[] {
  return [
    ...inletShapes(design, layout),
    ...boxShapes(design, layout),
    ...rowShapes(design, layout, solved, system, 'section'),
    ...baffleShapes(design, layout),
  ];
}

/** The row from above: u along the row as in the section, v across it, 0 in the middle. */
export function planShapes(
  design: Design,
  layout: Layout,
  solved: Solved | null,
  system: UnitSystem,
): DrawingShape[] {
  const { box, baffle, sink, plenum } = design;
  const { bank, fans, bayStart_m, bayEnd_m, rowStart_m } = layout;
  const wall = box.sheet_m;
  const half = box.width_m / 2;
  const shapes: DrawingShape[] = [
    ...fans.fans.flatMap((each) => [
      ...grilleShapes(design, each, each.v_m),
      ...fanShapes(design, each, each.v_m),
    ]),
    shape('box', 'wall', rect(bayStart_m, -half - wall, box.length_m + wall, wall)),
    shape('box', 'wall', rect(bayStart_m, half, box.length_m + wall, wall)),
    shape('box', 'wall', rect(bayEnd_m, -half, wall, box.width_m)),
  ];
  if (plenum.neckLength_m > 0) {
    shapes.push(neck([fans.depth_m, ...fans.across_m], [bayStart_m, -half, half]));
  }
  if (baffle.fitted) {
    const u = rowStart_m - baffle.endClearance_m;
    const length = bank.row_m + 2 * baffle.endClearance_m;
    const side = sink.width_m / 2 + baffle.sideClearance_m;
    const thick = Math.min(baffle.sheet_m, Math.max(visible_m, half - side));
    shapes.push(
      shape('baffle', 'collar', rect(u - thick, -side - thick, length + 2 * thick, thick)),
      shape('baffle', 'collar', rect(u - thick, side, length + 2 * thick, thick)),
      shape('baffle', 'collar', rect(u - thick, -side, thick, 2 * side)),
      shape('baffle', 'collar', rect(u + length, -side, thick, 2 * side)),
    );
  }
  return [...shapes, ...rowShapes(design, layout, solved, system, 'plan')];
}

/** Both ends as u, and from where to where across it. */
function neck(
  [from_m, a_m, b_m]: readonly [number, number, number],
  [to_m, c_m, d_m]: readonly [number, number, number],
): DrawingShape {
  const { box, corners } = polygon([
    { u_m: from_m, v_m: a_m },
    { u_m: to_m, v_m: c_m },
    { u_m: to_m, v_m: d_m },
    { u_m: from_m, v_m: b_m },
  ]);
  return shape('neck', 'neck', box, { corners });
}

function square(edge_m: number, u_m: number, v_m: number, width_m: number): Box {
  return rect(u_m, v_m - edge_m / 2, width_m, edge_m);
}

/** One fan with its axis at this v. */
function fanShapes({ fan }: Design, each: PlacedFan, v_m: number): DrawingShape[] {
  return [
    shape('fan', 'fanFrame', square(each.frame_m, each.u_m, v_m, fan.depth_m)),
    shape('fan', 'fanOpening', square(each.opening_m, each.u_m, v_m, fan.depth_m)),
    shape('fan', 'fanHub', square(each.hub_m, each.u_m + fan.depth_m * 0.15, v_m, fan.depth_m * 0.7)),
  ];
}

/** What stands before a lane of fans: guard next to the fan, filter before both. */
function grilleShapes({ fan, inlet }: Design, { u_m, opening_m }: PlacedFan, v_m: number): DrawingShape[] {
  if (u_m > 0) return [];
  const guard_m = inlet.guard.kind === 'none' ? 0 : Math.max(0.001, fan.depth_m * 0.08);
  const filter_m = Math.max(0.003, fan.depth_m * 0.25);
  return [
    ...(guard_m > 0 ? [shape('guard', 'guard', square(opening_m, -guard_m, v_m, guard_m))] : []),
    ...(inlet.filter
      ? [shape('filter', 'filter', square(opening_m, -filter_m - guard_m, v_m, filter_m))]
      : []),
  ];
}

/** Lanes lie behind one another in the section: those of other kinds are drawn first, the first lane before them. */
function inletShapes(design: Design, { zMax_m, bayStart_m, fans }: Layout): DrawingShape[] {
  const { plenum } = design;
  const axis = zMax_m - plenum.height_m / 2;
  const first = fans.fans.find(({ place }) => place === 'first');
  const seen = [
    ...fans.fans.filter(({ place }) => place === 'beside'),
    ...fans.fans.filter(({ place, v_m }) => place === 'behind' || (place === 'first' && v_m === first?.v_m)),
  ];
  const shapes = seen.flatMap((each) => [
    ...grilleShapes(design, each, axis),
    ...fanShapes(design, each, axis),
  ]);
  if (plenum.neckLength_m > 0)
    shapes.push(
      neck(
        [fans.depth_m, axis - fans.up_m, axis + fans.up_m],
        [bayStart_m, axis - plenum.height_m / 2, axis + plenum.height_m / 2],
      ),
    );
  return shapes;
}

function boxShapes(design: Design, layout: Layout): DrawingShape[] {
  const { plenum, box, baffle, outlet } = design;
  const { zMax_m, bayStart_m, bayEnd_m, top_m, bank, rowStart_m } = layout;
  const wall = box.sheet_m;
  const floor = zMax_m;
  const shapes = [
    shape('plenum', 'plenum', rect(bayStart_m, floor - plenum.height_m, box.length_m, plenum.height_m)),
    shape('box', 'wall', rect(bayStart_m, floor, box.length_m + wall, wall)),
    shape('box', 'wall', rect(bayEnd_m, zMax_m - top_m, wall, top_m)),
    shape('box', 'wall', rect(bayStart_m - wall, zMax_m - top_m, wall, top_m - plenum.height_m)),
  ];
  if (outlet.kind !== 'none') {
    const end = baffle.fitted ? baffle.endClearance_m : bank.end_m;
    const thick = Math.max(visible_m, wall / 2);
    shapes.push(
      shape('outlet', 'outlet', rect(rowStart_m - end, zMax_m - top_m - thick, bank.row_m + 2 * end, thick)),
    );
  }
  return shapes;
}

function baffleShapes(design: Design, layout: Layout): DrawingShape[] {
  const { plenum, box, baffle } = design;
  const { zMax_m, bayStart_m, rowStart_m, bank, bankBottom_m } = layout;
  if (!baffle.fitted) return [];
  const v = zMax_m - plenum.height_m - baffle.sheet_m;
  const collar = bank.collar_m;
  const u = rowStart_m - baffle.endClearance_m;
  const length = bank.row_m + 2 * baffle.endClearance_m;
  const thick = Math.max(visible_m, Math.min(baffle.sheet_m, u - bayStart_m));
  const foot_v = zMax_m - bankBottom_m;
  const height = collar + baffle.standOff_m;
  return [
    shape('baffle', 'baffle', rect(bayStart_m, v, box.length_m, baffle.sheet_m)),
    shape('baffle', 'slot', rect(rowStart_m, v, bank.row_m, baffle.sheet_m)),
    shape('baffle', 'collar', rect(u - thick, foot_v - collar, thick, height)),
    shape('baffle', 'collar', rect(u + length, foot_v - collar, thick, height)),
  ];
}

/** Sinks and resistors in turn, in either view; the two differ only in what lies across the row. */
function rowShapes(
  design: Design,
  layout: Layout,
  solved: Solved | null,
  system: UnitSystem,
  view: 'section' | 'plan',
): DrawingShape[] {
  const { sink, positions, parts, bond } = design;
  const { bank, rowStart_m, bankTop_m, zMax_m } = layout;
  const across_m = view === 'section' ? sink.length_m : sink.width_m;
  const top_v = view === 'section' ? zMax_m - bankTop_m : -sink.width_m / 2;
  const shapes: DrawingShape[] = [];
  const warm = warmthOf(design, solved, system);
  let u = rowStart_m;
  for (let s = 0; s < bank.sinkCount; s++) {
    if (bank.present[s]) {
      const outcome = solved?.heat.sinks[s] ?? null;
      const plate = (T_K: number | null) => {
        shapes.push(
          shape('sinks', 'plate', rect(u, top_v, sink.plate_m, across_m), { index: s, ...warm(T_K) }),
        );
        u += sink.plate_m;
      };
      if (bank.plateBefore[s]) plate(outcome?.before_K ?? null);
      shapes.push(
        shape('sinks', 'fins', rect(u, top_v, sink.finHeight_m, across_m), {
          index: s,
          ...warm(outcome?.airMean_K ?? null),
        }),
      );
      if (view === 'plan') {
        const pitch = bank.finGap_m + sink.finThickness_m;
        for (let f = 0; f < sink.finCount; f++) {
          shapes.push(
            shape('sinks', 'fin', rect(u, top_v + f * pitch, sink.finHeight_m, sink.finThickness_m), {
              index: s,
            }),
          );
        }
      }
      u += sink.finHeight_m;
      if (bank.plateAfter[s]) plate(outcome?.after_K ?? null);
    }
    const position = positions[s];
    const part = position ? parts[position.part] : undefined;
    const stack = bank.stack_m[s];
    if (!position || !part || stack === undefined) continue;
    const solvedPosition = solved?.heat.positions[s] ?? null;
    const size = view === 'section' ? part.width_m : part.length_m;
    const v = top_v + (across_m - size) / 2;
    const film_m = bond.filament_m;
    const body_m = part.thickness_m + part.coating_m;
    const back_m = stack - film_m - body_m;
    const layers: [number, ShapeRole, PartId][] = [
      [film_m, 'bond', 'bonds'],
      [body_m, 'chip', 'resistors'],
      [back_m, 'tab', 'secondFace'],
    ];
    let at = u;
    for (const [thick, role, owner] of position.flipped ? layers.reverse() : layers) {
      if (thick > 0) {
        const seen = role === 'chip' ? { ...warm(solvedPosition?.film_K ?? null), off: !position.on } : {};
        shapes.push(shape(owner, role, rect(at, v, thick, size), { index: s, ...seen }));
      }
      at += thick;
    }
    u += stack;
  }
  return shapes;
}

function warmthOf(design: Design, solved: Solved | null, system: UnitSystem) {
  const limit_K = Math.max(...design.parts.map((part) => part.zeroPowerAt_K));
  return (T_K: number | null): Extra => {
    if (T_K === null || solved === null) return {};
    const share = (T_K - solved.heat.room_K) / Math.max(1, limit_K - solved.heat.room_K);
    return { temperature: temperatureWords(T_K, system), warmth: Math.min(1, Math.max(0, share)) };
  };
}
