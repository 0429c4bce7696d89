import type { Design } from '../model/design.ts';
import type { DrawingPart, DrawingShape, PartId } from './drawing.ts';
import { boundsOf } from './drawingLayout.ts';
import { quantity } from './format.ts';
import type { UnitSystem } from './types.ts';

/** Order of the air's way, then what it cools: for the keyboard, and for the item numbers on the drawing. */
export const partOrder: readonly PartId[] = [
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

/** Everything that can be chosen in the drawing, with a name that says its main measure. */
export function drawingParts(
  design: Design,
  section: readonly DrawingShape[],
  plan: readonly DrawingShape[],
  system: UnitSystem,
): DrawingPart[] {
  const bounds = (shapes: readonly DrawingShape[], part: PartId) => {
    const own = shapes.filter((shape) => shape.part === part);
    return own.length > 0 ? boundsOf(own) : null;
  };
  return partOrder
    .map((part) => ({
      part,
      name: nameOf(part, design, system),
      section: bounds(section, part),
      plan: bounds(plan, part),
    }))
    .filter((part) => part.section !== null || part.plan !== null);
}

function nameOf(part: PartId, design: Design, system: UnitSystem): string {
  const { fan, plenum, baffle, sink, bond, box, positions, outlet, inlet, secondFace } = design;
  const length = (value_m: number) => quantity(value_m, 'length', system);
  const names: Partial<Record<PartId, string>> = {
    filter: 'Filter',
    guard: `Inlet guard, ${Math.round(inlet.guard.freeShare * 100)} % free`,
    fan: `${fansWord(design)}, ${length(fan.size_m)} frame, ${quantity(fan.supply_V, 'voltage', system)}`,
    neck: `Neck-down, ${length(plenum.neckLength_m)} long`,
    plenum: `Plenum, ${length(plenum.height_m)} high`,
    baffle: `Baffle, side clearance ${length(baffle.sideClearance_m)}`,
    sinks: `Sinks, ${sink.finCount} fins of ${length(sink.finThickness_m)}`,
    resistors: `Resistors, ${positions.length} ${positions.length === 1 ? 'position' : 'positions'}`,
    bonds: `Bond lines, ${length(bond.filament_m)} thick`,
    secondFace: `Second face, ${secondFace.way === 'tabs' ? `${secondFace.tabCount} tabs each` : secondFace.way === 'bonded' ? 'bonded' : 'free'}`,
    box: `Box, ${length(box.sheet_m)} ${box.material}`,
    outlet: `Outlet grille, ${Math.round(outlet.freeShare * 100)} % free`,
  };
  return names[part] ?? part;
}

function fansWord({ fan, moreFans }: Design): string {
  const count = fan.sideBySide * fan.inARow + moreFans.length;
  return count === 1 ? 'Fan' : `${count} fans`;
}
