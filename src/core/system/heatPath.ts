import { bondConductivityWithFilament } from '../conduction/bondConductivityWithFilament.ts';
import { bondResistance_KPerW } from '../conduction/bondResistance_KPerW.ts';
import { slabResistance_KPerW } from '../conduction/slabResistance_KPerW.ts';
import { prepareSpreading, type Spreading, spreadingPeak_KPerW } from '../conduction/spreadingLee.ts';
import { createHeatNetwork, type HeatNetwork } from '../heat/network.ts';
import { chipLateralResistance_KPerW } from '../resistor/chipLateralResistance_KPerW.ts';
import type { BankGeometry } from './geometry.ts';
import type { BondInput, PartInput, SecondFaceInput, SystemInput } from './input.ts';
import { type ShellFaces, shellFaces } from './shell.ts';

/** One way from a chip into a plate: resistances in a row, the spreading being the only one that moves with the flow. */
export interface PlateContact {
  readonly conductance: number;
  readonly plateNode: number;
  readonly sink: number;
  /** Coating (film side), or tabs and solder (second face). */
  readonly ahead_KPerW: number;
  readonly bond_KPerW: number;
  readonly plate_KPerW: number;
  readonly spreading: Spreading;
}

export interface PositionPath {
  readonly film: number;
  readonly body: number;
  readonly joint: number;
  /** Conductance from film to back of the chip, through the ceramic. */
  readonly through: number;
  readonly filmContact: PlateContact | null;
  readonly secondContact: PlateContact | null;
}

export interface SinkPath {
  readonly air: number;
  /** Node of the plate before and after, -1 where there is none. */
  readonly before: number;
  readonly after: number;
  /** Conductances: plate before → air, plate after → air, plate → plate through the fins, air → entering air. */
  readonly beforeAir: number;
  readonly afterAir: number;
  readonly across: number;
  readonly carry: number;
}

/** Sheet that faces one sink: its node, and the ways to it. The air of the gap between, without a mass of its own, is no node. */
export interface ShellPath {
  readonly wall: number;
  /** Conductances from either plate (-1 where there is none) to the wall, and past it to room and entering air. */
  readonly beforeWall: number;
  readonly afterWall: number;
  readonly beforeOut: number;
  readonly afterOut: number;
  readonly wallOut: number;
  readonly faces: ShellFaces;
}

export interface HeatPath {
  readonly network: HeatNetwork;
  readonly positions: readonly PositionPath[];
  readonly sinks: readonly (SinkPath | null)[];
  readonly shells: readonly (ShellPath | null)[];
  /** Nodes that tell whether the rounds of the solver have settled: all but the walls, which follow the sinks. */
  readonly judged: readonly number[];
  /** Positions without any way to a sink, and the conductances that hold them at the temperature of the entering air. */
  readonly stranded: readonly number[];
  readonly loose: readonly number[];
}

/** The bank as a ladder: sinks and resistors in turn, each chip with its ways to the plates beside it. */
export function buildHeatPath(input: SystemInput, bank: BankGeometry): HeatPath {
  const first: number[] = [];
  const second: number[] = [];
  const fixedIndex: { index: number; G: number }[] = [];
  let nodes = 0;
  const join = (a: number, b: number, G = 0) => {
    first.push(a);
    const index = second.push(b) - 1;
    if (G > 0) fixedIndex.push({ index, G });
    return index;
  };

  // Nodes first, along the row, so that neighbours stay close in the band.
  const judged: number[] = [];
  const node = () => {
    judged.push(nodes);
    return nodes++;
  };
  const sinkNodes: { wall: number; before: number; air: number; after: number }[] = [];
  const chipNodes: { film: number; body: number; joint: number }[] = [];
  for (let s = 0; s < bank.sinkCount; s++) {
    const here = bank.present[s];
    sinkNodes.push({
      wall: here ? nodes++ : -1,
      before: bank.plateBefore[s] ? node() : -1,
      air: here ? node() : -1,
      after: bank.plateAfter[s] ? node() : -1,
    });
    if (s < bank.sinkCount - 1) chipNodes.push({ film: node(), body: node(), joint: node() });
  }

  const sinks = sinkNodes.map(({ before, air, after }): SinkPath | null =>
    air < 0
      ? null
      : {
          air,
          before,
          after,
          beforeAir: before < 0 ? -1 : join(before, air),
          afterAir: after < 0 ? -1 : join(after, air),
          across: before < 0 || after < 0 ? -1 : join(before, after),
          carry: join(air, -1),
        },
  );

  // All inner sinks look alike, and the two ends.
  let inner: ShellFaces | null = null;
  let end: ShellFaces | null = null;
  const facesOf = (s: number): ShellFaces => {
    if (s > 0 && s < bank.sinkCount - 1) {
      inner ??= shellFaces(input, bank, s);
      return inner;
    }
    end ??= shellFaces(input, bank, s);
    return end;
  };
  const shells = sinkNodes.map(({ wall, before, after }, s): ShellPath | null => {
    if (wall < 0) return null;
    const from = (plate: number, to: number) => (plate < 0 ? -1 : join(plate, to));
    return {
      wall,
      beforeWall: from(before, wall),
      afterWall: from(after, wall),
      beforeOut: from(before, -1),
      afterOut: from(after, -1),
      wallOut: join(wall, -1),
      faces: facesOf(s),
    };
  });

  const plateArea_m2 = input.sink.width_m * input.sink.length_m;
  const plate_KPerW = slabResistance_KPerW(input.sink.plate_m, input.sink.k_WPerMK, plateArea_m2);
  const contact = (from: number, sink: number, plateNode: number, way: ContactWay): PlateContact => ({
    conductance: join(from, plateNode),
    plateNode,
    sink,
    ahead_KPerW: way.ahead_KPerW,
    bond_KPerW: way.bond_KPerW,
    plate_KPerW,
    spreading: way.spreading,
  });
  // Equal parts share their ways: the geometry of a contact is worked once for each part, not for each position.
  const spread = (area_m2: number) => prepareSpreading(area_m2, plateArea_m2, input.sink.plate_m);
  const waysOf = new Map<PartInput, PartWays>();
  const ways = (part: PartInput): PartWays => {
    let known = waysOf.get(part);
    if (!known) {
      known = partWays(part, input.bond, input.secondFace, input.factors.bondConductivity, spread);
      waysOf.set(part, known);
    }
    return known;
  };

  const stranded: number[] = [];
  const loose: number[] = [];
  const positions = input.positions.map(({ part, flipped }, r): PositionPath => {
    const { film, body, joint } = chipNodes[r] as (typeof chipNodes)[number];
    const beside = { sink: r, node: (sinkNodes[r] as (typeof sinkNodes)[number]).after };
    const beyond = { sink: r + 1, node: (sinkNodes[r + 1] as (typeof sinkNodes)[number]).before };
    const filmTo = flipped ? beyond : beside;
    const secondTo = flipped ? beside : beyond;
    const { through_WPerK, lateral_WPerK, filmWay, secondWay } = ways(part);
    const through = join(film, body, through_WPerK);
    join(film, joint, lateral_WPerK);
    const filmContact = filmTo.node < 0 ? null : contact(film, filmTo.sink, filmTo.node, filmWay);
    const start = input.secondFace.way === 'tabs' ? joint : body;
    const secondContact =
      secondTo.node < 0 || !secondWay ? null : contact(start, secondTo.sink, secondTo.node, secondWay);
    if (!filmContact && !secondContact) {
      stranded.push(r);
      // Without power it sits at the temperature of the air that comes in; with power there is no answer.
      loose.push(join(film, -1, 1e-2));
    }
    return { film, body, joint, through, filmContact, secondContact };
  });

  const network = createHeatNetwork(nodes, first, second);
  for (const { index, G } of fixedIndex) network.G_WPerK[index] = G;
  return { network, positions, sinks, shells, judged, stranded, loose };
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
