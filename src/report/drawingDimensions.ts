import type { Design } from '../model/design.ts';
import type { Dimension, DrawingModel, DrawingShapes, Spot } from './drawing.ts';
import { type Layout, layOut } from './drawingLayout.ts';
import { type Words, wordMeasure } from './drawingMeasures.ts';
import type { UnitSystem } from './types.ts';

type Draft = Words &
  Pick<Dimension, 'from' | 'to' | 'side'> &
  Partial<Pick<Dimension, 'drawnAs' | 'clear_m' | 'hidden' | 'prominence'>>;

/** A drawing of this design with its dimensions. */
export function withDimensions(drawing: DrawingShapes, design: Design, system: UnitSystem): DrawingModel {
  const layout = layOut(design);
  const dimensions = (drafts: Draft[]) =>
    drafts.map(
      ({
        from,
        to,
        side,
        drawnAs = 'line',
        clear_m = null,
        hidden = [],
        prominence = 'more',
        ...words
      }): Dimension => ({
        ...wordMeasure(words, design, system),
        from,
        to,
        side,
        drawnAs,
        clear_m,
        hidden,
        prominence,
      }),
    );
  return {
    ...drawing,
    section: { ...drawing.section, dimensions: dimensions(sectionDrafts(design, layout)) },
    plan: { ...drawing.plan, dimensions: dimensions(planDrafts(design, layout)) },
  };
}

/** Heights stand at the right, lengths below. */
function sectionDrafts(design: Design, layout: Layout): Draft[] {
  const { fan, plenum, box, baffle } = design;
  const { zMax_m, bayStart_m, bayEnd_m, bankBottom_m, bankTop_m, baffleTop_m, top_m, bank, fans } = layout;
  const right_m = bayEnd_m + box.sheet_m;
  const axis_m = plenum.height_m / 2;
  const at = (u_m: number, z_m: number): Spot => ({ u_m, v_m: zMax_m - z_m });
  const upright = (from_m: number, to_m: number) => ({
    from: at(right_m, from_m),
    to: at(right_m, to_m),
    side: 'right' as const,
  });
  const level = (from_m: number, to_m: number, z_m: number) => ({
    from: at(from_m, z_m),
    to: at(to_m, z_m),
    side: 'below' as const,
  });
  const spot = (u_m: number, z_m: number) => ({
    ...level(u_m, u_m, z_m),
    drawnAs: 'leader' as const,
  });
  const slope_m = fans.up_m - axis_m;
  const drawnAngle_rad = 2 * Math.atan2(Math.abs(slope_m), plenum.neckLength_m);
  const neckIs = plenum.neckLength_m > 0 ? 'main' : 'more';
  return [
    {
      id: 'fan',
      part: 'fan',
      path: 'fan.size_m',
      label: 'fan',
      from: at(0, axis_m - fan.size_m / 2),
      to: at(0, axis_m + fan.size_m / 2),
      side: 'left',
      prominence: 'main',
    },
    {
      id: 'depth',
      part: 'fan',
      path: 'fan.depth_m',
      ...level(0, fan.depth_m, axis_m - fan.size_m / 2),
    },
    {
      id: 'neck',
      part: 'neck',
      path: 'plenum.neckLength_m',
      label: 'neck-down',
      ...level(fans.depth_m, bayStart_m, -box.sheet_m),
      prominence: neckIs,
    },
    {
      id: 'angle',
      part: 'neck',
      path: 'plenum.neckAngle_rad',
      toScale: Math.abs(drawnAngle_rad - plenum.neckAngle_rad) < 0.02,
      ...spot((fans.depth_m + bayStart_m) / 2, axis_m - (fans.up_m + axis_m) / 2),
    },
    {
      id: 'bay',
      part: 'box',
      path: 'box.length_m',
      label: 'inside',
      ...level(bayStart_m, bayEnd_m, -box.sheet_m),
      prominence: 'main',
    },
    { id: 'headroom', part: 'box', path: 'box.headroom_m', ...upright(bankTop_m, top_m) },
    {
      id: 'fins',
      part: 'sinks',
      path: 'sink.length_m',
      label: 'fins',
      ...upright(bankBottom_m, bankTop_m),
      prominence: 'main',
    },
    ...(baffle.fitted
      ? ([
          {
            id: 'collar',
            part: 'baffle',
            path: 'baffle.collar_m',
            label: 'collar',
            ...upright(bankBottom_m, bankBottom_m + bank.collar_m),
          },
          {
            id: 'standOff',
            part: 'baffle',
            path: 'baffle.standOff_m',
            ...upright(baffleTop_m, bankBottom_m),
          },
          {
            id: 'baffleSheet',
            part: 'baffle',
            path: 'baffle.sheet_m',
            ...upright(plenum.height_m, baffleTop_m),
          },
          {
            id: 'leak',
            part: 'baffle',
            path: 'baffle.leakGap_m',
            label: 'leak',
            short: 'leak',
            toScale: false,
            ...spot(bayEnd_m - 0.3 * box.sheet_m, plenum.height_m),
          },
        ] satisfies Draft[])
      : []),
    {
      id: 'plenum',
      part: 'plenum',
      path: 'plenum.height_m',
      label: 'plenum',
      ...upright(0, plenum.height_m),
      prominence: 'main',
    },
    { id: 'wall', part: 'box', path: 'box.sheet_m', ...upright(-box.sheet_m, 0) },
  ];
}

/** The fan's opening, the row, the sink, the slot below it and the gaps that the baffle leaves. */
function planDrafts(design: Design, layout: Layout): Draft[] {
  const { sink, box, baffle } = design;
  const { bank, fans, rowStart_m, bayEnd_m } = layout;
  const half_m = box.width_m / 2;
  const rowEnd_m = rowStart_m + bank.row_m;
  const middle_m = (rowStart_m + rowEnd_m) / 2;
  const edge_m = sink.width_m / 2;
  const right_m = bayEnd_m + box.sheet_m;
  const across = (width_m: number) => ({
    from: { u_m: right_m, v_m: -width_m / 2 },
    to: { u_m: right_m, v_m: width_m / 2 },
    side: 'right' as const,
  });
  const along = (from_m: number, to_m: number) => ({
    from: { u_m: from_m, v_m: half_m + box.sheet_m },
    to: { u_m: to_m, v_m: half_m + box.sheet_m },
    side: 'below' as const,
  });
  const lane = fans.fans.find(({ place }) => place === 'first');
  const fins_m = rowStart_m + (sink.first ? 0 : (bank.stack_m[0] ?? 0) + sink.plate_m);
  // Where the leaders of slot and side gap stand: beside a resistor, clear of what is written under the sinks.
  const before_m = rowStart_m + (bank.sinkDepth_m[0] ?? 0) + (bank.stack_m[0] ?? 0) / 2;
  const after_m =
    bank.stack_m.length > 1
      ? rowEnd_m - (bank.sinkDepth_m.at(-1) ?? 0) - (bank.stack_m.at(-1) ?? 0) / 2
      : rowEnd_m - sink.plate_m / 2;
  const slotEdge = (v_m: number) =>
    [
      { u_m: rowStart_m, v_m },
      { u_m: rowEnd_m, v_m },
    ] as const;
  const slot_m = baffle.slotWidth_m / 2;
  return [
    ...(lane === undefined
      ? []
      : [
          {
            id: 'opening',
            part: 'fan',
            path: 'fan.opening_m',
            from: { u_m: 0, v_m: lane.v_m - lane.opening_m / 2 },
            to: { u_m: 0, v_m: lane.v_m + lane.opening_m / 2 },
            side: 'left',
          } satisfies Draft,
        ]),
    {
      id: 'row',
      part: 'sinks',
      path: null,
      value_m: bank.row_m,
      label: 'row',
      ...along(rowStart_m, rowEnd_m),
      prominence: 'main',
    },
    { id: 'finHeight', part: 'sinks', path: 'sink.finHeight_m', ...along(fins_m, fins_m + sink.finHeight_m) },
    {
      id: 'width',
      part: 'sinks',
      path: 'sink.width_m',
      label: 'sink',
      ...across(sink.width_m),
      prominence: baffle.fitted ? 'main' : 'more',
    },
    {
      id: 'bay',
      part: 'box',
      path: 'box.width_m',
      label: 'inside',
      ...across(box.width_m),
      // Without a baffle, on the sheet, the width of the bay takes the place of that of a sink.
      prominence: baffle.fitted ? 'more' : 'main',
    },
    ...(baffle.fitted
      ? ([
          {
            id: 'slot',
            part: 'baffle',
            path: 'baffle.slotWidth_m',
            from: { u_m: middle_m, v_m: -slot_m },
            to: { u_m: middle_m, v_m: slot_m },
            side: 'below',
            drawnAs: 'leader',
            clear_m: before_m,
            hidden: [slotEdge(-slot_m), slotEdge(slot_m)],
          },
          {
            id: 'side',
            part: 'baffle',
            path: 'baffle.sideClearance_m',
            label: 'side gap',
            from: { u_m: middle_m, v_m: -edge_m - baffle.sideClearance_m },
            to: { u_m: middle_m, v_m: -edge_m },
            side: 'above',
            drawnAs: 'leader',
            clear_m: after_m,
            prominence: 'main',
          },
          {
            id: 'end',
            part: 'baffle',
            path: 'baffle.endClearance_m',
            label: 'end gap',
            from: { u_m: rowEnd_m, v_m: 0 },
            to: { u_m: rowEnd_m + baffle.endClearance_m, v_m: 0 },
            side: 'right',
            drawnAs: 'leader',
            prominence: 'main',
          },
        ] satisfies Draft[])
      : []),
  ];
}
