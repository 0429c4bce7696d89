import { type HeatTopology, heatTopology } from '../heat/network.ts';
import type { BankGeometry } from './geometry.ts';
import type { SystemInput } from './input.ts';

/** Where a chip meets the plate of a sink. */
export interface ContactPlace {
  readonly conductance: number;
  readonly plateNode: number;
  readonly sink: number;
}

export interface ChipPlace {
  readonly film: number;
  readonly body: number;
  readonly joint: number;
  /** Conductances from film to back of the chip, through the ceramic, and from film to terminals, along it. */
  readonly through: number;
  readonly along: number;
  readonly filmContact: ContactPlace | null;
  readonly secondContact: ContactPlace | null;
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
}

/** Numbers of all nodes and conductances of a bank: what stays when only its measures change. */
export interface HeatLayout {
  readonly topology: HeatTopology;
  readonly chips: readonly ChipPlace[];
  readonly sinks: readonly (SinkPath | null)[];
  readonly shells: readonly (ShellPath | null)[];
  /** Nodes that tell whether the rounds of the solver have settled: all but the walls, which follow the sinks. */
  readonly judged: readonly number[];
  /** Positions without any way to a sink, and the conductances that hold them at the temperature of the entering air. */
  readonly stranded: readonly number[];
  readonly loose: readonly number[];
}

/** All that a layout depends on. */
interface Shape {
  readonly hasFirstSink: boolean;
  readonly hasLastSink: boolean;
  readonly way: SystemInput['secondFace']['way'];
  readonly flipped: readonly boolean[];
}

let last: { readonly shape: Shape; readonly layout: HeatLayout } | null = null;

/** The layout of a bank. The last one is kept: studies ask for the same again and again. */
export function heatLayout(input: SystemInput, bank: BankGeometry): HeatLayout {
  if (last && fits(last.shape, input)) return last.layout;
  const { hasFirstSink, hasLastSink, secondFace, positions } = input;
  const flipped = positions.map((position) => position.flipped);
  const layout = layOut(bank, secondFace.way, flipped);
  last = { shape: { hasFirstSink, hasLastSink, way: secondFace.way, flipped }, layout };
  return layout;
}

function fits({ hasFirstSink, hasLastSink, way, flipped }: Shape, input: SystemInput): boolean {
  const { positions } = input;
  if (hasFirstSink !== input.hasFirstSink || hasLastSink !== input.hasLastSink) return false;
  if (way !== input.secondFace.way || flipped.length !== positions.length) return false;
  for (let r = 0; r < flipped.length; r++)
    if (flipped[r] !== (positions[r] as (typeof positions)[number]).flipped) return false;
  return true;
}

/** The bank as a ladder: sinks and resistors in turn, each chip with its ways to the plates beside it. */
function layOut(bank: BankGeometry, way: Shape['way'], flipped: readonly boolean[]): HeatLayout {
  const first: number[] = [];
  const second: number[] = [];
  let nodes = 0;
  const join = (a: number, b: number) => {
    first.push(a);
    return second.push(b) - 1;
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
  const shells = sinkNodes.map(({ wall, before, after }): ShellPath | null => {
    if (wall < 0) return null;
    const from = (plate: number, to: number) => (plate < 0 ? -1 : join(plate, to));
    return {
      wall,
      beforeWall: from(before, wall),
      afterWall: from(after, wall),
      beforeOut: from(before, -1),
      afterOut: from(after, -1),
      wallOut: join(wall, -1),
    };
  });

  const stranded: number[] = [];
  const loose: number[] = [];
  const contact = (from: number, sink: number, plateNode: number): ContactPlace | null =>
    plateNode < 0 ? null : { conductance: join(from, plateNode), plateNode, sink };
  const chips = flipped.map((turned, r): ChipPlace => {
    const { film, body, joint } = chipNodes[r] as (typeof chipNodes)[number];
    const beside = { sink: r, node: (sinkNodes[r] as (typeof sinkNodes)[number]).after };
    const beyond = { sink: r + 1, node: (sinkNodes[r + 1] as (typeof sinkNodes)[number]).before };
    const filmTo = turned ? beyond : beside;
    const secondTo = turned ? beside : beyond;
    const through = join(film, body);
    const along = join(film, joint);
    const filmContact = contact(film, filmTo.sink, filmTo.node);
    const secondContact =
      way === 'free' ? null : contact(way === 'tabs' ? joint : body, secondTo.sink, secondTo.node);
    if (!filmContact && !secondContact) {
      stranded.push(r);
      // Without power it sits at the temperature of the air that comes in; with power there is no answer.
      loose.push(join(film, -1));
    }
    return { film, body, joint, through, along, filmContact, secondContact };
  });
  const topology = heatTopology(nodes, first, second);
  return { topology, chips, sinks, shells, judged, stranded, loose };
}
