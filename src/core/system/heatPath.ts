import { bondConductivityWithFilament } from '../conduction/bondConductivityWithFilament.ts';
import { bondResistance_KPerW } from '../conduction/bondResistance_KPerW.ts';
import { slabResistance_KPerW } from '../conduction/slabResistance_KPerW.ts';
import { prepareSpreading, type Spreading, spreadingPeak_KPerW } from '../conduction/spreadingLee.ts';
import { type HeatNetwork, heatNetworkOf } from '../heat/network.ts';
import { chipLateralResistance_KPerW } from '../resistor/chipLateralResistance_KPerW.ts';
import type { BankGeometry } from './geometry.ts';
import {
  type ChipPlace,
  type ContactPlace,
  type HeatLayout,
  heatLayout,
  type ShellPath,
  type SinkPath,
} from './heatLayout.ts';
import type { BondInput, PartInput, SecondFaceInput, SystemInput } from './input.ts';
import { type ShellFaces, shellFaces } from './shell.ts';

/** One way from a chip into a plate: resistances in a row, the spreading being the only one that moves with the flow. */
export interface PlateContact extends ContactPlace {
  /** Coating (film side), or tabs and solder (second face). */
  readonly ahead_KPerW: number;
  readonly bond_KPerW: number;
  readonly plate_KPerW: number;
  readonly spreading: Spreading;
}

export interface PositionPath extends ChipPlace {
  readonly filmContact: PlateContact | null;
  readonly secondContact: PlateContact | null;
}

export interface HeatPath {
  readonly layout: HeatLayout;
  readonly network: HeatNetwork;
  readonly positions: readonly PositionPath[];
  readonly sinks: readonly (SinkPath | null)[];
  readonly shells: readonly (ShellPath | null)[];
  /** Faces of every sink and the walls beside it. */
  readonly faces: readonly (ShellFaces | null)[];
}

/** The heat network of a bank with what of it follows from the drawing alone; flows and temperatures bring the rest. */
export function buildHeatPath(input: SystemInput, bank: BankGeometry): HeatPath {
  const layout = heatLayout(input, bank);
  const { chips, sinks, shells, loose } = layout;
  const network = heatNetworkOf(layout.topology);
  const { G_WPerK } = network;
  const plateArea_m2 = input.sink.width_m * input.sink.length_m;
  const plate_KPerW = slabResistance_KPerW(input.sink.plate_m, input.sink.k_WPerMK, plateArea_m2);
  const contact = (place: ContactPlace | null, way: ContactWay | null): PlateContact | null =>
    place && way
      ? {
          conductance: place.conductance,
          plateNode: place.plateNode,
          sink: place.sink,
          ahead_KPerW: way.ahead_KPerW,
          bond_KPerW: way.bond_KPerW,
          plate_KPerW,
          spreading: way.spreading,
        }
      : null;
  const spread = (area_m2: number) => prepareSpreading(area_m2, plateArea_m2, input.sink.plate_m);
  const ways = sharedWays((part) =>
    partWays(part, input.bond, input.secondFace, input.factors.bondConductivity, spread),
  );
  const positions = input.positions.map(({ part }, r): PositionPath => {
    const place = chips[r] as ChipPlace;
    const { film, body, joint, through, along } = place;
    const { through_WPerK, lateral_WPerK, filmWay, secondWay } = ways(part);
    G_WPerK[through] = through_WPerK;
    G_WPerK[along] = lateral_WPerK;
    const filmContact = contact(place.filmContact, filmWay);
    const secondContact = contact(place.secondContact, secondWay);
    return { film, body, joint, through, along, filmContact, secondContact };
  });
  for (const index of loose) G_WPerK[index] = 1e-2;
  return { layout, network, positions, sinks, shells, faces: facesOf(input, bank) };
}

/** All inner sinks look alike, and the two ends. */
function facesOf(input: SystemInput, bank: BankGeometry): (ShellFaces | null)[] {
  const { present, sinkCount } = bank;
  const last = sinkCount - 1;
  const end = present[0] ? 0 : last;
  const ofEnd = present[end] ? shellFaces(input, bank, end) : null;
  const ofInner = last > 1 ? shellFaces(input, bank, 1) : null;
  return present.map((here, s) => (here ? (s === 0 || s === last ? ofEnd : ofInner) : null));
}

/** Equal chips share their ways: the geometry of a contact is worked once for them, not for each position. */
function sharedWays(waysOf: (part: PartInput) => PartWays): (part: PartInput) => PartWays {
  const known = new Map<PartInput, PartWays>();
  let last: PartInput | null = null;
  return (part) => {
    let ways = known.get(part);
    if (!ways) {
      ways = (last && sameBody(last, part) && known.get(last)) || waysOf(part);
      known.set(part, ways);
    }
    last = part;
    return ways;
  };
}

/** All that the ways out of a chip depend on; its ohms may differ. */
function sameBody(a: PartInput, b: PartInput): boolean {
  return (
    a.length_m === b.length_m &&
    a.width_m === b.width_m &&
    a.thickness_m === b.thickness_m &&
    a.ceramic_WPerMK === b.ceramic_WPerMK &&
    a.coating_m === b.coating_m &&
    a.coating_WPerMK === b.coating_WPerMK
  );
}

interface ContactWay {
  readonly ahead_KPerW: number;
  readonly bond_KPerW: number;
  readonly spreading: Spreading;
}

interface PartWays {
  readonly through_WPerK: number;
  readonly lateral_WPerK: number;
  readonly filmWay: ContactWay;
  readonly secondWay: ContactWay | null;
}

function partWays(
  part: PartInput,
  bond: BondInput,
  face: SecondFaceInput,
  factor: number,
  spread: (area_m2: number) => Spreading,
): PartWays {
  const area_m2 = part.length_m * part.width_m;
  const bond_KPerW = bondOver(area_m2, bond, factor);
  const spreading = spread(area_m2);
  const coating_KPerW = slabResistance_KPerW(part.coating_m, part.coating_WPerMK, area_m2);
  return {
    through_WPerK: 1 / slabResistance_KPerW(part.thickness_m, part.ceramic_WPerMK, area_m2),
    lateral_WPerK:
      1 / chipLateralResistance_KPerW(part.length_m, part.ceramic_WPerMK, part.width_m, part.thickness_m),
    filmWay: { ahead_KPerW: coating_KPerW, bond_KPerW, spreading },
    secondWay:
      face.way === 'free'
        ? null
        : face.way === 'bonded'
          ? { ahead_KPerW: 0, bond_KPerW, spreading }
          : tabWay(part, bond, face, factor, spread),
  };
}

function tabWay(
  part: PartInput,
  bond: BondInput,
  face: SecondFaceInput,
  factor: number,
  spread: (area_m2: number) => Spreading,
): ContactWay {
  const landing_m2 = face.tabCount * face.tabWidth_m * face.tabLanding_m;
  const terminal_m2 = 2 * part.width_m * face.terminalLength_m;
  const tabs =
    slabResistance_KPerW(
      face.tabLength_m,
      face.tab_WPerMK,
      face.tabCount * face.tabWidth_m * face.tabThickness_m,
    ) + slabResistance_KPerW(face.solder_m, face.solder_WPerMK, terminal_m2);
  return { ahead_KPerW: tabs, bond_KPerW: bondOver(landing_m2, bond, factor), spreading: spread(landing_m2) };
}

function bondOver(area_m2: number, bond: BondInput, factor: number): number {
  const k = bondConductivityWithFilament({
    adhesive_WPerMK: bond.k_WPerMK * factor,
    filament_WPerMK: bond.filament_WPerMK,
    filament_m: bond.filament_m,
    filamentLength_m: Math.min(bond.filamentLength_m, area_m2 / bond.filament_m),
    area_m2,
  });
  return bondResistance_KPerW(bond.filament_m, k, area_m2, bond.voidShare, bond.contact_m2KPerW);
}

/** Conductance of a contact at the heat transfer coefficient that its plate sees on the fin side. */
export function contactConductance_WPerK(
  contact: PlateContact,
  k_WPerMK: number,
  h_WPerM2K: number,
  factor: number,
): number {
  const spreading = spreadingPeak_KPerW(contact.spreading, k_WPerMK, h_WPerM2K) * factor;
  return 1 / (contact.ahead_KPerW + contact.bond_KPerW + contact.plate_KPerW + spreading);
}
