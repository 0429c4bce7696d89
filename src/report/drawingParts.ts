import type { Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { DrawingPart, DrawingShape, PartId } from './drawing.ts';
import { boundsOf } from './drawingLayout.ts';
import { quantity } from './format.ts';
import type { UnitSystem } from './types.ts';
import { temperature, watts } from './words.ts';

/**
 * Order for the keyboard and for the item numbers: the job first (watts, room), then the way of the air as it meets the
 * parts: in through guard and fan, up through the baffle to the sinks; from there inward to what they cool; box, outlet.
 */
export const partOrder: readonly PartId[] = [
  'load',
  'room',
  'guard',
  'filter',
  'fan',
  'neck',
  'plenum',
  'baffle',
  'sinks',
  'resistors',
  'bonds',
  'secondFace',
  'box',
  'outlet',
];

/** Everything that can be chosen in the drawing, with a name that says its main measure and how hot it gets. */
export function drawingParts(
  design: Design,
  section: readonly DrawingShape[],
  plan: readonly DrawingShape[],
  solved: Solved | null,
  system: UnitSystem,
): DrawingPart[] {
  const bounds = (shapes: readonly DrawingShape[], part: PartId) => {
    const own = shapes.filter((shape) => shape.part === standsAt(part));
    return own.length > 0 ? boundsOf(own) : null;
  };
  return partOrder
    .map((part) => ({
      part,
      name: `${nameOf(part, design, system)}${solved === null ? '' : warmthOf(part, solved, system)}`,
      section: bounds(section, part),
      plan: bounds(plan, part),
    }))
    .filter((part) => part.section !== null || part.plan !== null);
}

/** The load lands in the resistors, and the room is where the fan draws from. */
function standsAt(part: PartId): PartId {
  return part === 'load' ? 'resistors' : part === 'room' ? 'fan' : part;
}

function nameOf(part: PartId, design: Design, system: UnitSystem): string {
  const { fan, plenum, baffle, sink, bond, box, positions, outlet, inlet, secondFace } = design;
  const length = (value_m: number) => quantity(value_m, 'length', system);
  const fans = fan.sideBySide * fan.inARow + design.moreFans.length;
  const names: Partial<Record<PartId, string>> = {
    load: 'Load',
    room: `Room, ${temperature(design.room.T_K, system)}`,
    filter: 'Filter',
    guard: `Inlet guard, ${Math.round(inlet.guard.freeShare * 100)} % free`,
    fan: `${fans === 1 ? 'Fan' : `Fans, ${fans}`}, ${length(fan.size_m)} frame, ${quantity(fan.supply_V, 'voltage', system)}`,
    neck: `Neck-down, ${length(plenum.neckLength_m)} long`,
    plenum: `Plenum, ${length(plenum.height_m)} high`,
    baffle: `Baffle, side clearance ${length(baffle.sideClearance_m)}`,
    sinks: `Sinks, ${positions.length - 1 + Number(sink.first) + Number(sink.last)}`,
    resistors: `Resistors, ${positions.length}`,
    bonds: `Bond lines, ${length(bond.filament_m)} thick`,
    secondFace: `Second face, ${secondFace.way === 'tabs' ? `${secondFace.tabCount} tabs each` : secondFace.way === 'bonded' ? 'bonded' : 'free'}`,
    box: `Box, ${length(box.sheet_m)} ${box.material}`,
    outlet: `Outlet grille, ${Math.round(outlet.freeShare * 100)} % free`,
  };
  return names[part] ?? part;
}

/** What follows the name: watts of the load, a temperature of everything else. */
function warmthOf(part: PartId, { heat }: Solved, system: UnitSystem): string {
  const hottest = (all: readonly (number | null | undefined)[], where = '') =>
    `, ${where}${temperature(Math.max(...all.map((T_K) => T_K ?? 0)), system)} at the hottest`;
  const { sinks, positions } = heat;
  switch (part) {
    case 'load':
      return `, ${watts(heat.total_W, system)}`;
    case 'room':
      return '';
    case 'baffle':
      return hottest(sinks.map((sink) => sink?.facing_K));
    case 'sinks':
      return hottest(sinks.flatMap((sink) => [sink?.before_K, sink?.after_K]));
    case 'resistors':
      return hottest(positions.map(({ film_K }) => film_K));
    case 'bonds':
      return hottest(positions.map(({ bond_K }) => bond_K));
    case 'secondFace':
      return hottest(
        positions.map(({ joint_K }) => joint_K),
        'joints ',
      );
    case 'box':
      return hottest(
        sinks.map((sink) => sink?.outside_K),
        'outside ',
      );
    case 'outlet':
      return `, air ${temperature(heat.exhaust_K, system)}`;
    default:
      return `, air ${temperature(part === 'neck' || part === 'plenum' ? heat.entering_K : heat.room_K, system)}`;
  }
}
