import { card as airNetwork } from '../../airflow/firstShare.ts';
import type { LinkLaw } from '../../airflow/linkLaw.ts';
import { card as frictionApparent } from '../../channel/frictionApparent.ts';
import { card as frictionDeveloped } from '../../channel/frictionDeveloped.ts';
import { card as frictionTurbulent } from '../../channel/frictionTurbulent.ts';
import { laminarUpTo, turbulentFrom } from '../../channel/passageDrop.ts';
import { card as standingFan } from '../../fan/standingDrop_Pa.ts';
import { card as draught } from '../../freeConvection/draught_Pa.ts';
import { elenbaas } from '../../freeConvection/elenbaas.ts';
import { buoyancy_PerM3K, rayleigh } from '../../freeConvection/rayleigh.ts';
import type { PathLink } from '../airPath.ts';
import { boxFans, ringArea_m2 } from '../fans.ts';
import type { AirOutcome, HeatOutcome } from '../outcome.ts';
import { carriesDraught } from '../work.ts';
import { draughtSum, flowShare, massSum, pressureMeeting, volumeFlow } from './balances/airBalances.ts';
import { slowInRings, standingLoss } from './balances/fanBalances.ts';
import {
  airSpeed,
  channelDrop,
  entranceLength,
  filterArea,
  filterDrop,
  headsLost,
  hydraulicDiameter,
  largerFriction,
  reynoldsNumber,
  sideRatio,
  slowSpeed,
  transitionFriction,
  turnedRound,
} from './balances/pathBalances.ts';
import { always, type Place, type Quantity, settled } from './book.ts';
import { readCurve } from './readCurve.ts';
import { type AirTold, linkAir, roomAir } from './tellAir.ts';
import { numbered, type Telling } from './telling.ts';
import { finGapOf, linkLoss } from './tellLosses.ts';

/** One link as it is in the answer. */
interface LinkTold {
  readonly t: Telling;
  readonly link: PathLink;
  readonly place: Place;
  readonly air: AirTold;
  readonly flow: Quantity;
  /** As the outcome has it, `null` where that does not tell it. */
  readonly drop_Pa: number | null;
}

/** Pressure of every stage and passage, shares, draught and the flow itself. @param fan_Pa nothing where no fan turns */
export function tellPath(t: Telling, air: AirOutcome, heat: HeatOutcome, fan_Pa: Quantity | number): void {
  const { path, flow } = t.work;
  const stages: Quantity[] = [];
  const lifts: Quantity[] = [];
  let bank: Quantity | null = null;
  let stage = 0;
  const count = new Map<string, number>();
  path.links.forEach((link, i) => {
    if (i === path.fanLink && path.fans) return;
    const key = link.stage ?? link.passage?.kind ?? '';
    const place = link.stage ? t.at('stage', stage, key) : t.at('passage', link.passage?.index ?? 0, key);
    const each: LinkTold = {
      t,
      link,
      place,
      air: linkAir(t, link.air),
      flow: settled(flow.massFlow[i] as number),
      drop_Pa: link.stage ? (air.stages[stage++]?.dp_Pa ?? null) : null,
    };
    const drop_Pa = tellDrop(each);
    const lift = tellLift(each, heat, flow.lift[i] as number);
    if (link.stage) {
      const before = count.get(key) ?? 0;
      count.set(key, before + 1);
      t.figure('stage', before === 0 ? key : `${key}:${before + 1}`, drop_Pa);
      stages.push(drop_Pa);
      if (typeof lift.from === 'number') lifts.push(lift);
      return;
    }
    const between = t.card(airNetwork, place, { drop_Pa, draught_Pa: lift });
    const isBank = link.from === (path.links.find((other) => other.passage)?.from ?? -1);
    if (isBank && (bank === null || (link.passage?.kind === 'fins' && bank.value === 0))) bank = between;
  });
  if (bank) {
    t.figure('stage', 'bank', bank);
    stages.push(bank);
  }
  const draught_Pa = t.balance(draughtSum, t.at('box'), numbered('lift_Pa', lifts), air.draught_Pa);
  t.figure('draught', null, draught_Pa);
  tellFlow(
    t,
    air,
    t.balance(pressureMeeting, t.at('box'), { ...numbered('drop_Pa', stages), fan_Pa, draught_Pa }),
  );
}

/** Shares of the air, and the flow of all. */
function tellFlow(t: Telling, air: AirOutcome, meeting: Quantity): void {
  const { passages, massFlow_kgPerS } = air;
  const flowOf = (index: number) => settled(passages[index]?.massFlow_kgPerS ?? 0);
  const all = passages.map((_, index) => flowOf(index));
  const whole = t.balance(massSum, t.at('box'), numbered('massFlow_kgPerS', all), massFlow_kgPerS);
  if (Math.abs(massFlow_kgPerS) > 1e-15) {
    passages.forEach(({ kind, index: at, share }, index) => {
      const given = { ...numbered('massFlow_kgPerS', [flowOf(index)]), whole_kgPerS: whole };
      t.figure('passage', index, t.balance(flowShare, t.at('passage', at, kind), given, share));
    });
    for (const kind of Object.keys(air.share) as (keyof typeof air.share)[]) {
      const own = passages.flatMap((passage, index) => (passage.kind === kind ? [flowOf(index)] : []));
      if (own.length === 0) continue;
      const given = { ...numbered('massFlow_kgPerS', own), whole_kgPerS: whole };
      const share = t.balance(flowShare, t.at('passage', undefined, kind), given, air.share[kind]);
      t.figure('share', kind, share);
    }
  }
  const rho_kgPerM3 = roomAir(t).rho();
  t.figure('density', null, rho_kgPerM3);
  t.figure('massFlow', null, whole);
  const flow = t.balance(volumeFlow, t.at('box'), { massFlow_kgPerS: whole, rho_kgPerM3 }, air.flow_m3PerS);
  t.figure('flow', null, flow, [meeting]);
}

/** What warm air gains along a link; the room's and the plenum's count as none. */
function tellLift({ t, link, place, air }: LinkTold, heat: HeatOutcome, lift_Pa: number): Quantity {
  if (!carriesDraught(t.work, link.air)) return always(0);
  const given = {
    around_kgPerM3: roomAir(t).rho(),
    inside_kgPerM3: air.rho(),
    rise_m: link.rise_m,
  };
  // How wide the column is matters where nothing but it moves the air: only then the range is judged.
  const judged = t.stopped ? { ...given, elenbaas: settled(widthOf(t, heat)) } : given;
  return t.card(draught, place, judged as typeof given & { elenbaas: Quantity }, lift_Pa);
}

function widthOf({ work }: Telling, heat: HeatOutcome): number {
  const { room, bank, input } = work;
  const hottest_K = heat.sinks.reduce(
    (most, each) => Math.max(most, each?.before_K ?? 0, each?.after_K ?? 0),
    0,
  );
  const nu = room.mu_PaS / room.rho_kgPerM3;
  const perKelvin = buoyancy_PerM3K(1 / room.T_K, nu, nu / room.prandtl);
  const ra = rayleigh(perKelvin, Math.max(0, hottest_K - heat.entering_K), bank.finGap_m);
  return elenbaas(ra, bank.finGap_m, input.sink.length_m);
}

function tellDrop(each: LinkTold): Quantity {
  const { t, link, place, air, flow } = each;
  const { law } = link;
  const known = each.drop_Pa ?? undefined;
  switch (law.kind) {
    case 'loss':
      return link.stage === 'standingFan' ? tellStanding(each) : tellHeads(each, law);
    case 'channels':
      return tellChannel(each, law);
    case 'twoTerm': {
      const { filter } = t.work.input.inlet;
      const whole_m2 = t.work.bank.fanArea_m2;
      const area_m2 = t.balance(filterArea, place, { whole_m2, blocked: filter?.blocked ?? 0 }, law.area_m2);
      const velocity_mPerS = speedOf(each, area_m2);
      const { linear_PaSPerM, quadratic_PaS2PerM2 } = law;
      return t.balance(filterDrop, place, { velocity_mPerS, linear_PaSPerM, quadratic_PaS2PerM2 }, known);
    }
    case 'points': {
      const { value } = flow;
      const at = t.balance(volumeFlow, place, {
        massFlow_kgPerS: settled(Math.abs(value)),
        rho_kgPerM3: air.rho(),
      });
      const forward = readCurve(t, place, law.curve, at);
      return value < 0 ? t.balance(turnedRound, place, { drop_Pa: forward }, known) : forward;
    }
    case 'fan':
      return settled(0);
  }
}

function speedOf({ t, place, air, flow }: LinkTold, area_m2: Quantity | number): Quantity {
  return t.balance(airSpeed, place, { massFlow_kgPerS: flow, rho_kgPerM3: air.rho(), area_m2 });
}

function tellHeads(each: LinkTold, law: Extract<LinkLaw, { kind: 'loss' }>): Quantity {
  const { t, link, place, air } = each;
  const rho_kgPerM3 = air.rho();
  const given = {
    loss: linkLoss(t, link, place),
    rho_kgPerM3,
    velocity_mPerS: speedOf(each, law.area_m2),
    slow_mPerS: t.balance(slowSpeed, place, { mu_PaS: air.mu(), rho_kgPerM3, size_m: law.size_m }),
  };
  return t.balance(headsLost, place, given, each.drop_Pa ?? undefined);
}

/** All fans at a stand, on the velocity between hub and rim of the first kind. */
function tellStanding(each: LinkTold): Quantity {
  const { t, link, place, air } = each;
  const [first] = boxFans(t.work.input);
  const rings_m2 = first ? first.sideBySide * ringArea_m2(first.kind) : 0;
  const law = link.law as Extract<LinkLaw, { kind: 'loss' }>;
  const loss = t.balance(standingLoss, place, { rings_m2, equal_m2: law.area_m2 });
  const rho_kgPerM3 = air.rho();
  const slow_mPerS = t.balance(slowInRings, place, {
    mu_PaS: air.mu(),
    rho_kgPerM3,
    opening_m: law.size_m,
    loss,
  });
  const velocity_mPerS = speedOf(each, rings_m2);
  return t.card(
    standingFan,
    place,
    { loss, velocity_mPerS, rho_kgPerM3, slow_mPerS },
    each.drop_Pa ?? undefined,
  );
}

function tellChannel(each: LinkTold, law: Extract<LinkLaw, { kind: 'channels' }>): Quantity {
  const { t, link, place, air } = each;
  const isFins = link.passage?.kind === 'fins';
  const finGap = isFins ? finGapOf(t) : null;
  const side = (length_m: number) => (finGap && length_m === finGap.value ? finGap : length_m);
  const sides = { gap_m: side(law.gap_m), height_m: side(law.height_m) };
  const hydraulic_m = t.balance(hydraulicDiameter, place, sides);
  const velocity_mPerS = speedOf(each, link.area_m2);
  const rho_kgPerM3 = air.rho();
  const mu_PaS = air.mu();
  const reynolds = t.balance(reynoldsNumber, place, { rho_kgPerM3, velocity_mPerS, hydraulic_m, mu_PaS });
  const aspect = t.balance(sideRatio, place, sides);
  const developed = t.card(frictionDeveloped, place, { aspect });
  const { length_m } = law;
  const xPlus = t.balance(entranceLength, place, { length_m, hydraulic_m, reynolds });
  const laminar = t.card(frictionApparent, place, { xPlus, developed });
  const frictionReynolds =
    reynolds.value > laminarUpTo
      ? tellTurbulent(t, place, { reynolds, hydraulic_m, length_m, developed, laminar })
      : laminar;
  const given = {
    factor: law.frictionFactor,
    frictionReynolds,
    mu_PaS,
    length_m,
    velocity_mPerS,
    hydraulic_m,
    loss: linkLoss(t, link, place),
    rho_kgPerM3,
    slow_mPerS: t.balance(slowSpeed, place, { mu_PaS, rho_kgPerM3, size_m: hydraulic_m }),
  };
  return t.balance(channelDrop, place, given, each.drop_Pa ?? undefined);
}

interface Turbulent {
  readonly reynolds: Quantity;
  readonly hydraulic_m: Quantity;
  readonly length_m: number;
  readonly developed: Quantity;
  readonly laminar: Quantity;
}

/** Beyond laminar flow; the laminar entrance still counts where it is the larger. */
function tellTurbulent(t: Telling, place: Place, { reynolds, laminar, ...start }: Turbulent): Quantity {
  const isFull = reynolds.value >= turbulentFrom;
  const turbulent = t.card(frictionTurbulent, place, { reynolds: isFull ? reynolds : always(turbulentFrom) });
  const friction = isFull
    ? turbulent
    : t.balance(transitionFriction, place, { turbulent, reynolds, ...start });
  return t.balance(largerFriction, place, { laminar, friction, reynolds });
}
