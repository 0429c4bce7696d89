import type { LinkLaw } from '../airflow/linkLaw.ts';
import type { AirLink, AirNetwork } from '../airflow/network.ts';
import type { FanGroup } from '../fan/fanGroup.ts';
import { baffleSlotLoss } from '../losses/baffleSlotLoss.ts';
import { exitLoss } from '../losses/exitLoss.ts';
import { finEntranceLoss } from '../losses/finEntranceLoss.ts';
import { mitreBendLoss } from '../losses/mitreBendLoss.ts';
import { preparePchip } from '../solve/pchip.ts';
import { fanLaw, runningFans, standingFans } from './fans.ts';
import type { BankGeometry } from './geometry.ts';
import type { ExtraLossInput, Run, SystemInput } from './input.ts';
import type { PassageKind, StageKey } from './outcome.ts';
import { crackLoss, grilleLoss, neckLoss } from './pathLosses.ts';

/** Which air a link carries: that of sink s where it is a number, else the room's, the plenum's, the gaps' or the exhaust's. */
export type LinkAir = 'room' | 'plenum' | 'gap' | 'exhaust' | number;

export interface PathLink extends AirLink {
  readonly air: LinkAir;
  readonly stage: StageKey | null;
  readonly passage: { readonly kind: PassageKind; readonly index: number } | null;
  /** Area that the stated velocity belongs to. */
  readonly area_m2: number;
  readonly hydraulic_m: number;
  /** How far the air rises along it, plumb, tilt counted: what a draught works on. */
  readonly rise_m: number;
}

export interface AirPath extends AirNetwork {
  readonly links: readonly PathLink[];
  /** All fans together, as one link that carries all of the air. */
  readonly fanLink: number;
  /** `null` while they stand still. */
  readonly fans: FanGroup | null;
  /** Link of the channels of sink s, or -1. */
  readonly finLink: readonly number[];
  /** Links of the gaps beside and at the ends of the row, or -1. */
  readonly sideLink: number;
  readonly endLink: number;
  readonly plenumNode: number;
  readonly aboveNode: number;
}

/** The box as a network: room, inlet, fans, neck-down, plenum, slot, passages side by side, leak, outlet, room. */
export function buildAirPath(input: SystemInput, bank: BankGeometry, run: Run): AirPath {
  const links: PathLink[] = [];
  let node = 0;
  let nodes = 1;
  const upright = Math.cos(input.box.tilt_rad);
  // Lying flat there is no draught, not the rounding error of a right angle.
  const plumb = (height_m: number) => (Math.abs(upright) < 1e-9 ? 0 : height_m * upright);

  const add = (
    from: number,
    to: number,
    law: LinkLaw,
    rest: Omit<PathLink, 'from' | 'to' | 'law' | 'rise_m'>,
    height_m = 0,
  ) => {
    const { air, stage, passage, area_m2, hydraulic_m } = rest;
    const rise_m = height_m === 0 ? 0 : plumb(height_m);
    return links.push({ from, to, law, air, stage, passage, area_m2, hydraulic_m, rise_m }) - 1;
  };
  const inSeries = (
    law: LinkLaw | null,
    stage: StageKey,
    air: LinkAir,
    area_m2: number,
    hydraulic_m: number,
    height_m = 0,
  ) => {
    if (law === null) return;
    add(node, nodes, law, { air, stage, passage: null, area_m2, hydraulic_m }, height_m);
    node = nodes++;
  };

  const { fan, inlet, plenum, baffle, box, sink, factors } = input;
  const overSlot_m = baffle ? baffle.standOff_m : 0;
  const minor = factors.minorLoss;
  const lossOn = (loss: number, area_m2: number, size_m: number): LinkLaw | null =>
    loss > 0 ? { kind: 'loss', loss: loss * minor, area_m2, size_m } : null;

  inSeries(
    lossOn(grilleLoss(inlet.guard), bank.fanArea_m2, fan.opening_m),
    'guard',
    'room',
    bank.fanArea_m2,
    fan.opening_m,
  );
  if (inlet.filter && inlet.filter.linear_PaSPerM + inlet.filter.quadratic_PaS2PerM2 > 0) {
    inSeries(
      { kind: 'twoTerm', ...inlet.filter, area_m2: bank.fanArea_m2 * (1 - inlet.filter.blocked) },
      'filter',
      'room',
      bank.fanArea_m2,
      fan.opening_m,
    );
  }
  const extrasAt = (place: ExtraLossInput['place'], stage: StageKey, air: LinkAir) => {
    for (const extra of input.extras) {
      if (extra.place === place)
        inSeries(extraLaw(extra, minor), stage, air, extra.area_m2, Math.sqrt(extra.area_m2));
    }
  };
  extrasAt('inlet', 'inletExtra', 'room');

  const fans = run.fans === 'running' ? runningFans(input) : null;
  const standing = fans === null;
  const fanLink = add(node, nodes, fans === null ? standingFans(input) : fanLaw(fans, factors.fanFlow), {
    air: 'room',
    stage: standing ? 'standingFan' : null,
    passage: null,
    area_m2: bank.fanArea_m2,
    hydraulic_m: fan.opening_m,
  });
  node = nodes++;

  const plenumSize = hydraulic(plenum.height_m, box.width_m);
  const neck = neckLoss(bank.fanArea_m2, bank.plenumArea_m2, plenum.neckAngle_rad);
  inSeries(lossOn(neck.loss, neck.area_m2, plenumSize), 'neck', 'plenum', neck.area_m2, plenumSize);
  inSeries(
    channels(
      1,
      plenum.height_m,
      box.width_m,
      plenum.length_m,
      (baffle ? 0 : mitreBendLoss()) * minor,
      factors.channelFriction,
    ),
    'plenum',
    'plenum',
    bank.plenumArea_m2,
    plenumSize,
    plenum.height_m / 2,
  );
  extrasAt('plenum', 'plenumExtra', 'plenum');
  const plenumNode = node;

  if (baffle) {
    const area_m2 = baffle.slotWidth_m * bank.row_m;
    inSeries(
      { kind: 'loss', loss: baffleSlotLoss() * factors.slotLoss, area_m2, size_m: baffle.slotWidth_m },
      'slot',
      'plenum',
      area_m2,
      baffle.slotWidth_m,
      overSlot_m,
    );
  }
  const underNode = node;
  const outlets = outletLaws(input, bank);
  const aboveNode = outlets.length > 0 ? nodes++ : 0;

  const passage = (
    kind: PassageKind,
    index: number,
    air: LinkAir,
    count: number,
    gap: number,
    height: number,
    length: number,
    sigma: number,
  ) => {
    const loss = (finEntranceLoss(sigma) + exitLoss()) * minor;
    return add(
      underNode,
      aboveNode,
      channels(count, gap, height, length, loss, factors.channelFriction),
      {
        air,
        stage: null,
        passage: { kind, index },
        area_m2: count * gap * height,
        hydraulic_m: hydraulic(gap, height),
      },
      sink.length_m,
    );
  };

  const sigma = bank.finGap_m / (bank.finGap_m + sink.finThickness_m);
  const finLink = bank.present.map((here, s) =>
    here ? passage('fins', s, s, bank.channels, bank.finGap_m, sink.finHeight_m, sink.length_m, sigma) : -1,
  );
  for (const [thickness, { first, count }] of byThickness(bank.stack_m)) {
    passage('between', first, 'plenum', count, thickness, sink.width_m, sink.length_m, 0);
  }
  const gaps = { side: -1, end: -1 };
  if (bank.side_m > 0) gaps.side = passage('side', 0, 'gap', 2, bank.side_m, bank.row_m, bank.collar_m, 0);
  if (bank.end_m > 0)
    gaps.end = passage('end', 0, 'gap', 2, bank.end_m, sink.width_m + 2 * bank.side_m, bank.collar_m, 0);
  if (baffle && baffle.leakGap_m > 0) {
    const area_m2 = baffle.leakGap_m * 2 * (box.length_m + box.width_m);
    add(
      plenumNode,
      aboveNode,
      {
        kind: 'loss',
        loss: crackLoss(box.sheet_m / baffle.leakGap_m) * minor,
        area_m2,
        size_m: 2 * baffle.leakGap_m,
      },
      {
        air: 'plenum',
        stage: null,
        passage: { kind: 'leak', index: 0 },
        area_m2,
        hydraulic_m: 2 * baffle.leakGap_m,
      },
      overSlot_m + sink.length_m,
    );
  }

  node = aboveNode;
  outlets.forEach(({ law, stage, area_m2 }, i) => {
    const to = i === outlets.length - 1 ? 0 : nodes++;
    add(
      node,
      to,
      law,
      { air: 'exhaust', stage, passage: null, area_m2, hydraulic_m: Math.sqrt(area_m2) },
      i === 0 ? box.headroom_m : 0,
    );
    node = to;
  });

  return {
    nodeCount: nodes,
    links,
    fanLink,
    fans,
    finLink,
    sideLink: gaps.side,
    endLink: gaps.end,
    plenumNode,
    aboveNode,
  };
}

/** What stands between the top of the bank and the room, in the way of the air; an open top has its walls at most. */
function outletLaws(
  input: SystemInput,
  bank: BankGeometry,
): { law: LinkLaw; stage: StageKey; area_m2: number }[] {
  const minor = input.factors.minorLoss;
  const laws: { law: LinkLaw; stage: StageKey; area_m2: number }[] = [];
  const grille = grilleLoss(input.outlet);
  if (grille > 0) {
    const area_m2 = bank.outletArea_m2;
    const law: LinkLaw = {
      kind: 'loss',
      loss: (grille + exitLoss()) * minor,
      area_m2,
      size_m: input.sink.width_m,
    };
    laws.push({ law, stage: 'outlet', area_m2 });
  }
  for (const extra of input.extras) {
    const law = extra.place === 'outlet' ? extraLaw(extra, minor) : null;
    if (law) laws.push({ law, stage: 'outletExtra', area_m2: extra.area_m2 });
  }
  if (laws.length === 0 && input.box.headroom_m > 0) {
    const across_m = input.sink.width_m + 2 * bank.side_m;
    const along_m = bank.row_m + 2 * bank.end_m;
    const law = channels(1, across_m, along_m, input.box.headroom_m, 0, input.factors.channelFriction);
    laws.push({ law, stage: 'outlet', area_m2: bank.outletArea_m2 });
  }
  return laws;
}

function channels(
  count: number,
  a_m: number,
  b_m: number,
  length_m: number,
  loss: number,
  frictionFactor: number,
): LinkLaw {
  return {
    kind: 'channels',
    count,
    gap_m: Math.min(a_m, b_m),
    height_m: Math.max(a_m, b_m),
    length_m,
    loss,
    frictionFactor,
  };
}

function extraLaw(extra: ExtraLossInput, factor: number): LinkLaw | null {
  if (extra.points.length > 1) {
    return {
      kind: 'points',
      curve: preparePchip(
        extra.points.map((p) => p.flow_m3PerS),
        extra.points.map((p) => p.dp_Pa),
      ),
    };
  }
  if (extra.loss <= 0) return null;
  return {
    kind: 'loss',
    loss: extra.loss * factor,
    area_m2: extra.area_m2,
    size_m: Math.sqrt(extra.area_m2),
  };
}

function hydraulic(a_m: number, b_m: number): number {
  return (2 * a_m * b_m) / (a_m + b_m);
}

function byThickness(stack_m: readonly number[]): Map<number, { first: number; count: number }> {
  const groups = new Map<number, { first: number; count: number }>();
  stack_m.forEach((thickness, index) => {
    const group = groups.get(thickness);
    if (group) group.count += 1;
    else groups.set(thickness, { first: index, count: 1 });
  });
  return groups;
}
