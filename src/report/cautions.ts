import { bankGeometry } from '../core/system/geometry.ts';
import type { Outcome } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { supplyKindOf, toCore } from '../model/toCore.ts';
import { quantity } from './format.ts';
import type { Caution, UnitSystem } from './types.ts';
import { temperature } from './words.ts';

/** Volts up to which a dry hand is taken to be safe: 50 V, from memory of the low-voltage standards. */
const touchSafe_V = 50;

/** Widest slot in a grille for its distance from the danger, ISO 13857 through a supplier's table, arm of an adult. */
const slotReach_m: readonly (readonly [slot_m: number, distance_m: number])[] = [
  [0.004, 0.002],
  [0.006, 0.01],
  [0.008, 0.02],
  [0.01, 0.08],
  [0.012, 0.1],
  [0.02, 0.12],
];

/** What a builder has to be told of this design, whatever the verdict. Local codes come first where they bind. */
export function cautions(design: Design, outcome: Outcome, system: UnitSystem): Caution[] {
  const electric = dangerousVolts(design, outcome);
  return [
    ...(electric ? [practice(), insulation(design, system)] : []),
    hotSurfaces(design, outcome, system),
    fire(design),
    ...(design.inlet.guard.kind === 'none' ? [guard()] : []),
    fingerAccess(design, system),
    ...(/\b(abs|asa|hips|pvc|pmma|acryl\w*|\w*styrene)\b/i.test(design.box.material)
      ? [solventCement(design)]
      : []),
  ];
}

/** Whether a supply that can kill may be inside: told by the design, or not told at all. */
function dangerousVolts(design: Design, outcome: Outcome): boolean {
  const most_V = supplyVolts(design, outcome);
  return most_V === null || most_V > touchSafe_V || design.fan.supply_V > touchSafe_V;
}

/** Most volts between any two places of the load; `null` where the design does not say how it is fed. */
function supplyVolts({ load }: Design, outcome: Outcome): number | null {
  const kind = supplyKindOf[load.excitation];
  if (kind === 'volts') return load.supply_V * (1 + load.supplyTolerance);
  if (kind === null || !outcome.ok) return null;
  const volts = outcome.heat.positions.map((p) => p.voltage_V);
  return load.excitation === 'seriesAmps' ? volts.reduce((sum, v) => sum + v, 0) : Math.max(...volts);
}

function practice(): Caution {
  return {
    key: 'practice',
    title: 'Local codes and licensed practice come first',
    text: 'This is a calculation, not an approval. Where mains or any supply above about 50 V is involved, the code in force at the place of use decides, and the wiring, earthing and testing belong to someone licensed for it.',
  };
}

function insulation({ bond }: Design, system: UnitSystem): Caution {
  return {
    key: 'insulation',
    title: 'The bond is spacing, not insulation',
    text: `A filament of ${quantity(bond.filament_m, 'length', system)} sets the thickness of the bond; it is no rated insulation. Earth every sink, test each joint at high voltage, and use certified insulation where mains can reach.`,
  };
}

function hotSurfaces(design: Design, outcome: Outcome, system: UnitSystem): Caution {
  const plates = outcome.ok
    ? outcome.heat.sinks.flatMap((sink) => (sink ? [sink.before_K ?? 0, sink.after_K ?? 0] : []))
    : [];
  const hot = plates.length > 0 ? `The sinks reach ${temperature(Math.max(...plates), system)} here. ` : '';
  const reach = design.limits.touchable
    ? 'They can be touched: mark them as hot.'
    : 'Keep them out of reach and mark the box as hot.';
  return {
    key: 'hotSurfaces',
    title: 'Hot surfaces burn',
    text: `${hot}${reach} Bare metal at ${temperature(333.15, system)} burns within seconds; let the box cool before opening it.`,
  };
}

function fire(design: Design): Caution {
  return {
    key: 'fire',
    title: 'Fire',
    text: `If the fan stops or the inlet is covered, everything here grows far hotter: fit a thermal cut-out that ends the load, keep paper, cloth and vapour away, and do not leave the ${design.box.material} box unwatched until it is proven.`,
  };
}

function guard(): Caution {
  return {
    key: 'guard',
    title: 'No guard on the fan',
    text: 'Turning blades can be reached at the inlet. Fit a guard there and enter its loss.',
  };
}

function fingerAccess(design: Design, system: UnitSystem): Caution {
  const distance_m = design.box.headroom_m;
  const length = (value_m: number) => quantity(value_m, 'length', system);
  const allowed = slotReach_m.filter(([, needed]) => needed <= distance_m).at(-1);
  const rule = allowed
    ? `with the sinks ${length(distance_m)} behind the outlet, slots there may be no wider than ${length(allowed[0])}`
    : `with the sinks only ${length(distance_m)} behind the outlet, no slot there keeps a fingertip off`;
  const open = design.outlet.kind === 'none';
  const bank = bankGeometry(toCore(design));
  const wide = length(design.sink.width_m + 2 * bank.side_m);
  return {
    key: 'fingerAccess',
    title: open ? 'The outlet is open' : 'Openings of the outlet',
    text: `${open ? `A hand can enter an opening ${wide} wide and reach hot and live parts; fit a grille. ` : ''}To keep fingers out, ${rule} (ISO 13857, adults, through a supplier’s table; confirm in the standard).`,
  };
}

function solventCement({ box }: Design): Caution {
  return {
    key: 'solventCement',
    title: 'Solvent cement',
    text: `Cement for ${box.material} gives off flammable vapour: air the room, no flame or spark, and let it cure fully before power; solvent left in a joint softens the sheet.`,
  };
}
