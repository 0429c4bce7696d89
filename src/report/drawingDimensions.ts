import type { Design } from '../model/design.ts';
import type { Dimension, PartId, Spot } from './drawing.ts';
import type { Layout } from './drawingLayout.ts';
import { quantity } from './format.ts';
import type { UnitSystem } from './types.ts';

type Make = (
  id: string,
  part: PartId,
  path: string | null,
  label: string,
  value_m: number,
  from: Spot,
  to: Spot,
  side: Dimension['side'],
) => Dimension;

function maker(system: UnitSystem): Make {
  return (id, part, path, label, value_m, from, to, side) => ({
    id,
    part,
    path,
    label,
    text: quantity(value_m, 'length', system),
    from,
    to,
    side,
  });
}

/** Main measures of the section; heights stand at the right, lengths below. */
export function sectionDimensions(design: Design, layout: Layout, system: UnitSystem): Dimension[] {
  const { fan, plenum, sink, box, baffle } = design;
  const { zMax_m, bayStart_m, bayEnd_m, bankBottom_m, bankTop_m, bank, rowStart_m } = layout;
  const make = maker(system);
  const at = (u_m: number, z_m: number): Spot => ({ u_m, v_m: zMax_m - z_m });
  const right = bayEnd_m + box.sheet_m;
  const dimensions = [
    make(
      'fan',
      'fan',
      'fan.size_m',
      'fan',
      fan.size_m,
      at(0, (plenum.height_m - fan.size_m) / 2),
      at(0, (plenum.height_m + fan.size_m) / 2),
      'left',
    ),
    make(
      'plenum',
      'plenum',
      'plenum.height_m',
      'plenum',
      plenum.height_m,
      at(right, 0),
      at(right, plenum.height_m),
      'right',
    ),
    make(
      'fins',
      'sinks',
      'sink.length_m',
      'fins',
      sink.length_m,
      at(right, bankBottom_m),
      at(right, bankTop_m),
      'right',
    ),
    make(
      'bay',
      'box',
      'box.length_m',
      'inside',
      box.length_m,
      at(bayStart_m, -box.sheet_m),
      at(bayEnd_m, -box.sheet_m),
      'below',
    ),
  ];
  if (plenum.neckLength_m > 0) {
    dimensions.push(
      make(
        'neck',
        'neck',
        'plenum.neckLength_m',
        'neck-down',
        plenum.neckLength_m,
        at(fan.depth_m, -box.sheet_m),
        at(bayStart_m, -box.sheet_m),
        'below',
      ),
    );
  }
  if (baffle.fitted) {
    const u = rowStart_m - baffle.endClearance_m;
    dimensions.push(
      make(
        'collar',
        'baffle',
        'baffle.collar_m',
        'collar',
        bank.collar_m,
        at(u, bankBottom_m),
        at(u, bankBottom_m + bank.collar_m),
        'left',
      ),
    );
  }
  return dimensions;
}

/** Main measures of the plan: the row, the sink, the gaps that the baffle leaves. */
export function planDimensions(design: Design, layout: Layout, system: UnitSystem): Dimension[] {
  const { sink, box, baffle } = design;
  const { bank, rowStart_m, bayEnd_m } = layout;
  const make = maker(system);
  const half = box.width_m / 2;
  const rowEnd = rowStart_m + bank.row_m;
  const edge = sink.width_m / 2;
  const right = bayEnd_m + box.sheet_m;
  const dimensions = [
    make(
      'row',
      'sinks',
      null,
      'row',
      bank.row_m,
      { u_m: rowStart_m, v_m: half + box.sheet_m },
      { u_m: rowEnd, v_m: half + box.sheet_m },
      'below',
    ),
  ];
  if (baffle.fitted) {
    const middle = rowStart_m + bank.row_m / 2;
    dimensions.push(
      make(
        'width',
        'sinks',
        'sink.width_m',
        'sink',
        sink.width_m,
        { u_m: right, v_m: -edge },
        { u_m: right, v_m: edge },
        'right',
      ),
      make(
        'side',
        'baffle',
        'baffle.sideClearance_m',
        'side gap',
        baffle.sideClearance_m,
        { u_m: middle, v_m: -edge - baffle.sideClearance_m },
        { u_m: middle, v_m: -edge },
        'above',
      ),
      make(
        'end',
        'baffle',
        'baffle.endClearance_m',
        'end gap',
        baffle.endClearance_m,
        { u_m: rowEnd, v_m: 0 },
        { u_m: rowEnd + baffle.endClearance_m, v_m: 0 },
        'right',
      ),
    );
  } else {
    // The width of the bay takes the place beside the plan; that of a sink stands among the inputs.
    dimensions.push(
      make(
        'bay',
        'box',
        'box.width_m',
        'inside',
        box.width_m,
        { u_m: right, v_m: -half },
        { u_m: right, v_m: half },
        'right',
      ),
    );
  }
  return dimensions;
}
