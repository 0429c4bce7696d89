import { card as fanHeat } from '../../fan/fanHeatRise_K.ts';
import type { PlateContact } from '../heatPath.ts';
import type { HeatOutcome, PositionOutcome, SinkOutcome } from '../outcome.ts';
import { hottest_K } from '../updateAir.ts';
import {
  airLeaving,
  atTemperature,
  bondFace,
  bondFaceOf,
  exhaustMix,
  fanRise,
  hotterPlate,
  ladderSum,
  noBond,
  nodeRise,
  outsideOfWall,
  stepAtChip,
  stepBetween,
  stepByWatts,
  stepInPlate,
  wattsBetween,
} from './balances/heatBalances.ts';
import { wattSum } from './balances/loadBalances.ts';
import {
  acrossWithGap,
  gapCarried,
  givenOff,
  ofPlate,
  sharedByPlates,
  tangentSum,
} from './balances/shellBalances.ts';
import { always, type Place, type Quantity, settled } from './book.ts';
import { nodeNames } from './nodeNames.ts';
import { meanCp, roomAir } from './tellAir.ts';
import { type ChipTold, type ContactTold, tellChip } from './tellContacts.ts';
import { numbered, type Telling } from './telling.ts';
import { type ShellTold, tellShell } from './tellShell.ts';
import { type SinkTold, tellSink } from './tellSinks.ts';

/** Temperatures that limits are held against. */
export interface TemperaturesTold {
  readonly entering_K: Quantity;
  readonly exhaust_K: Quantity;
  readonly film_K: readonly Quantity[];
  readonly joint_K: readonly Quantity[];
  readonly bond_K: readonly Quantity[];
  readonly plate_K: readonly (Quantity | null)[];
  readonly outside_K: readonly (Quantity | null)[];
}

/** The network with everything in it told. */
interface Bank {
  readonly t: Telling;
  readonly heat: HeatOutcome;
  readonly entering_K: Quantity;
  readonly sinks: readonly (SinkTold | null)[];
  readonly shells: readonly (ShellTold | null)[];
  readonly chips: readonly ChipTold[];
  /** Conductances and powers of the network, by their numbers. */
  readonly G: ReadonlyMap<number, Quantity>;
  readonly power: ReadonlyMap<number, Quantity>;
  readonly names: readonly string[];
}

/** @param power_W of every position; of all fans */
export function tellTemperatures(
  t: Telling,
  heat: HeatOutcome,
  power_W: readonly Quantity[],
  fan_W: Quantity | number,
): TemperaturesTold {
  const { work } = t;
  const sinks = work.heat.sinks.map((_, s) => tellSink(t, s));
  const shells = work.heat.sinks.map((nodes, s) => tellShell(t, s, nodes));
  const chips = work.heat.positions.map((_, r) => tellChip(t, r, sinks));
  const { G, power } = tellNetwork(t, sinks, shells, chips, power_W);
  const entering_K = tellEntering(t, fan_W, heat.entering_K);
  const bank: Bank = { t, heat, entering_K, sinks, shells, chips, G, power, names: nodeNames(work) };
  const plates = heat.sinks.map((sink) => (sink ? tellPlates(bank, sink) : null));
  const parts = heat.positions.map((position) => tellPosition(bank, position));
  return {
    entering_K,
    exhaust_K: tellExhaust(bank),
    film_K: parts.map(({ film_K }) => film_K),
    joint_K: parts.map(({ joint_K }) => joint_K),
    bond_K: parts.map(({ bond_K }) => bond_K),
    plate_K: plates.map((plate) => plate?.plate_K ?? null),
    outside_K: plates.map((plate) => plate?.outside_K ?? null),
  };
}

function tellEntering(t: Telling, fan_W: Quantity | number, value: number): Quantity {
  const { flow, path, room, input, reversed } = t.work;
  const room_K = input.room.T_K;
  const massFlow = flow.massFlow[path.fanLink] as number;
  let dT_K: Quantity = always(0);
  if (path.fans && !reversed) {
    const given = {
      power_W: fan_W,
      flow_m3PerS: settled(massFlow / room.rho_kgPerM3),
      rho_kgPerM3: roomAir(t).rho(),
      cp_JPerKgK: meanCp(t),
    };
    dT_K = t.card(fanHeat, t.at('fan'), given);
  }
  const entering_K = t.balance(fanRise, t.at('box'), { room_K, dT_K }, value);
  t.figure('entering', null, entering_K);
  return entering_K;
}

/** Every conductance and power of the heat network under its number. */
function tellNetwork(
  t: Telling,
  sinks: Bank['sinks'],
  shells: Bank['shells'],
  chips: Bank['chips'],
  power_W: readonly Quantity[],
) {
  const { heat, input } = t.work;
  const { network } = heat;
  const G = new Map<number, Quantity>();
  const power = new Map<number, Quantity>();
  const roomRise_K = settled(input.room.T_K - t.work.entering_K);
  heat.sinks.forEach((nodes, s) => {
    const sink = sinks[s];
    const shell = shells[s];
    const path = heat.shells[s];
    if (!nodes || !sink || !shell || !path) return;
    const place = t.at('sink', s);
    const known = (index: number) => network.G_WPerK[index] as number;
    const share = always(nodes.before >= 0 && nodes.after >= 0 ? 0.5 : 1);
    const { past_WPerK, carried_WPerK, upwards_WPerK: out_WPerK } = shell;
    const wallward = t.balance(sharedByPlates, place, {
      share,
      first_WPerK: shell.radiation_WPerK,
      second_WPerK: past_WPerK,
    });
    const outward = t.balance(sharedByPlates, place, {
      share,
      first_WPerK: out_WPerK,
      second_WPerK: carried_WPerK,
    });
    const gained = t.balance(ofPlate, place, {
      share,
      out_WPerK,
      roomRise_K,
      offset_W: shell.upwardsOffset_W,
    });
    for (const [node, air, wall, out] of [
      [nodes.before, nodes.beforeAir, path.beforeWall, path.beforeOut],
      [nodes.after, nodes.afterAir, path.afterWall, path.afterOut],
    ] as const) {
      if (node < 0) continue;
      G.set(air, sink.plateToAir_WPerK).set(wall, wallward).set(out, outward);
      power.set(node, gained);
    }
    if (sink.across_WPerK) {
      const across = { across_WPerK: sink.across_WPerK, past_WPerK };
      G.set(nodes.across, t.balance(acrossWithGap, place, across, known(nodes.across)));
    }
    G.set(nodes.carry, sink.carry_WPerK);
    const wallOut = { plain_WPerK: shell.outwards_WPerK, more_WPerK: carried_WPerK };
    G.set(path.wallOut, t.balance(tangentSum, place, wallOut, known(path.wallOut)));
    const ofWall = {
      share: always(1),
      out_WPerK: shell.outwards_WPerK,
      roomRise_K,
      offset_W: shell.outwardsOffset_W,
    };
    power.set(path.wall, t.balance(ofPlate, place, ofWall));
  });
  heat.positions.forEach((path, r) => {
    const chip = chips[r] as ChipTold;
    G.set(path.through, chip.through_WPerK).set(path.along, chip.along_WPerK);
    if (path.filmContact && chip.film) G.set(path.filmContact.conductance, chip.film.G_WPerK);
    if (path.secondContact && chip.second) G.set(path.secondContact.conductance, chip.second.G_WPerK);
    power.set(path.film, power_W[r] as Quantity);
  });
  return { G, power };
}

/** Rise of one node over the entering air, by its neighbours. */
function riseOf({ t, G, power, names }: Bank, node: number, place: Place): Quantity {
  const { network } = t.work.heat;
  const rise_K = (index: number) => network.rise_K[index] as number;
  const conductances: (Quantity | number)[] = [];
  const rises: Quantity[] = [];
  const says: Record<string, string> = {};
  let toAir: Quantity = always(0);
  let out = 0;
  for (let i = 0; i < network.a.length; i++) {
    const from = network.a[i] as number;
    const to = network.b[i] as number;
    if (from !== node && to !== node) continue;
    const conductance = G.get(i) ?? (network.G_WPerK[i] as number);
    if (to < 0) {
      toAir =
        out === 0 && typeof conductance !== 'number'
          ? conductance
          : settled(out + (network.G_WPerK[i] as number));
      out += network.G_WPerK[i] as number;
      continue;
    }
    const other = from === node ? to : from;
    conductances.push(conductance);
    rises.push(settled(rise_K(other)));
    says[`G_WPerK#${rises.length}`] = `conductance to the ${names[other]}`;
    says[`otherRise_K#${rises.length}`] = `rise of the ${names[other]}`;
  }
  const given = {
    power_W: power.get(node) ?? always(0),
    toAir_WPerK: toAir,
    ...numbered('G_WPerK', conductances),
    ...numbered('otherRise_K', rises),
  };
  return t.balance(nodeRise, place, given, rise_K(node), says);
}

function temperatureOf(bank: Bank, node: number, place: Place, value: number): Quantity {
  const hereRise_K = riseOf(bank, node, place);
  return bank.t.balance(atTemperature, place, { entering_K: bank.entering_K, hereRise_K }, value);
}

function tellPlates(bank: Bank, sink: SinkOutcome): { plate_K: Quantity; outside_K: Quantity | null } {
  const { t, entering_K } = bank;
  const { index: s, before_K, after_K, heat_W, airOut_K } = sink;
  const place = t.at('sink', s);
  const nodes = t.work.heat.sinks[s];
  const shellNodes = t.work.heat.shells[s];
  const told = bank.sinks[s];
  const shell = bank.shells[s];
  if (!nodes || !shellNodes || !told || !shell) return { plate_K: entering_K, outside_K: null };
  const before = before_K === null ? null : temperatureOf(bank, nodes.before, place, before_K);
  const after = after_K === null ? null : temperatureOf(bank, nodes.after, place, after_K);
  const plate_K =
    before && after
      ? t.balance(hotterPlate, place, { before_K: before, after_K: after })
      : ((before ?? after) as Quantity);
  t.figure('plate', s, plate_K);
  const airRise_K = riseOf(bank, nodes.air, place);
  const heat = { G_WPerK: told.carry_WPerK, fromRise_K: airRise_K, toRise_K: always(0) };
  const power_W = t.balance(wattsBetween, place, heat, heat_W);
  t.figure('heat', s, power_W);
  const { capacityFlow_WPerK } = told;
  t.figure('airOut', s, t.balance(airLeaving, place, { entering_K, power_W, capacityFlow_WPerK }, airOut_K));
  const facing_K = temperatureOf(bank, shellNodes.wall, place, sink.facing_K);
  t.figure('facing', s, facing_K);
  const wall = { room_K: t.work.input.room.T_K, outerShare: shell.outerShare, facing_K };
  const outside_K = t.balance(outsideOfWall, place, wall, sink.outside_K);
  t.figure('outside', s, outside_K);
  return { plate_K, outside_K };
}

function tellPosition(bank: Bank, p: PositionOutcome) {
  const { t } = bank;
  const { index: r } = p;
  const place = t.at('resistor', r);
  const path = t.work.heat.positions[r] as (typeof t.work.heat.positions)[number];
  const chip = bank.chips[r] as ChipTold;
  const film = riseOf(bank, path.film, place);
  const joint_K = temperatureOf(bank, path.joint, place, p.joint_K);
  const body_K = temperatureOf(bank, path.body, place, p.body_K);
  t.figure('joint', r, joint_K);
  t.figure('body', r, body_K);
  const second = riseOf(bank, t.work.input.secondFace.way === 'tabs' ? path.joint : path.body, place);
  const ways = {
    film: wayOf(bank, place, path.filmContact, chip.film, film, p.filmSide_W),
    second: wayOf(bank, place, path.secondContact, chip.second, second, p.secondSide_W),
  };
  if (ways.film) t.figure('filmSide', r, ways.film.power_W);
  if (ways.second) t.figure('secondSide', r, ways.second.power_W);
  const film_K = tellLadder(bank, r, place, { film, ways, value: p.film_K });
  t.figure('film', r, film_K);
  const second_K = t.work.input.secondFace.way === 'tabs' ? joint_K : body_K;
  const bond_K = tellBondFace(bank, place, p, { film_K, second_K, ways });
  t.figure('bond', r, bond_K);
  return { film_K, joint_K, bond_K };
}

interface Way {
  readonly contact: PlateContact;
  readonly told: ContactTold;
  readonly plate: Quantity;
  /** Where on the chip it begins. */
  readonly start: Quantity;
  readonly power_W: Quantity;
}

interface Ways {
  readonly film: Way | null;
  readonly second: Way | null;
}

function wayOf(
  bank: Bank,
  place: Place,
  contact: PlateContact | null,
  told: ContactTold | null,
  start: Quantity,
  watts: number,
): Way | null {
  if (!contact || !told) return null;
  const plate = riseOf(bank, contact.plateNode, bank.t.at('sink', contact.sink));
  const given = { G_WPerK: told.G_WPerK, fromRise_K: start, toRise_K: plate };
  return { contact, told, plate, start, power_W: bank.t.balance(wattsBetween, place, given, watts) };
}

/** The ladder of kelvins of one film, by its film face, by the second one where that has no sink. */
function tellLadder(
  bank: Bank,
  r: number,
  place: Place,
  { film, ways, value }: { film: Quantity; ways: Ways; value: number },
): Quantity {
  const { t, heat, entering_K } = bank;
  const room_K = t.work.input.room.T_K;
  const isHottest = r === heat.hottest;
  const note = (key: string, step: Quantity) => {
    if (isHottest) t.figure('rung', key, step);
    return step;
  };
  const fromFan = t.balance(stepBetween, t.at('box'), {
    upperRise_K: always(0),
    lowerRise_K: settled(room_K - entering_K.value),
  });
  const steps = [note('fanHeat', fromFan)];
  const way = ways.film ?? ways.second;
  if (!way) {
    steps.push(note('coating', t.balance(stepBetween, place, { upperRise_K: film, lowerRise_K: always(0) })));
  } else {
    const { told, plate, start, power_W } = way;
    const sink = t.work.heat.sinks[way.contact.sink];
    const beside = t.at('sink', way.contact.sink);
    const air = sink ? riseOf(bank, sink.air, beside) : settled(0);
    const { factor, plate_KPerW, spreading_KPerW, bond_KPerW, ahead_KPerW } = {
      ...told,
      factor: t.work.input.factors.spreading,
    };
    steps.push(
      note('airRise', t.balance(stepBetween, beside, { upperRise_K: air, lowerRise_K: always(0) })),
      note('finToAir', t.balance(stepBetween, beside, { upperRise_K: plate, lowerRise_K: air })),
      note('spreading', t.balance(stepInPlate, place, { power_W, plate_KPerW, factor, spreading_KPerW })),
      note('bond', t.balance(stepByWatts, place, { power_W, R_KPerW: bond_KPerW })),
      note(
        'coating',
        t.balance(stepAtChip, place, { power_W, ahead_KPerW, filmRise_K: film, startRise_K: start }),
      ),
    );
  }
  const rungs = way ? rungNames : [rungNames[0] as string, 'from the entering air to the film'];
  const names = Object.fromEntries(rungs.map((name, i) => [`dT_K#${i + 1}`, name]));
  return t.balance(ladderSum, place, { room_K, ...numbered('dT_K', steps) }, value, names);
}

const rungNames: readonly string[] = [
  'the fan’s own heat',
  'air warming up',
  'fins to air',
  'plate and spreading in it',
  'bond line',
  'coating and chip',
];

/** Hottest face of the bond lines of one resistor. */
function tellBondFace(
  { t }: Bank,
  place: Place,
  p: PositionOutcome,
  { film_K, second_K, ways }: { film_K: Quantity; second_K: Quantity; ways: Ways },
): Quantity {
  const { film, second } = ways;
  if (film && second) {
    const given = {
      film_K,
      film_W: film.power_W,
      film_KPerW: film.told.ahead_KPerW,
      second_K,
      second_W: second.power_W,
      second_KPerW: second.told.ahead_KPerW,
    };
    return t.balance(bondFace, place, given, p.bond_K);
  }
  const only = film ?? second;
  if (!only) return t.balance(noBond, place, {}, p.bond_K);
  const chip_K = film ? film_K : second_K;
  return t.balance(
    bondFaceOf,
    place,
    { chip_K, power_W: only.power_W, ahead_KPerW: only.told.ahead_KPerW },
    p.bond_K,
  );
}

/** Watts that the air carries and that walls give off, and the air that leaves. */
function tellExhaust(bank: Bank): Quantity {
  const { t, heat, shells, entering_K } = bank;
  const { network } = t.work.heat;
  const roomRise_K = settled(t.work.input.room.T_K - t.work.entering_K);
  const carried: Quantity[] = [];
  const given: Quantity[] = [];
  t.work.heat.sinks.forEach((nodes, s) => {
    const shell = shells[s];
    const path = t.work.heat.shells[s];
    const sink = bank.sinks[s];
    if (!nodes || !shell || !path || !sink) return;
    const place = t.at('sink', s);
    const rise = (node: number) => network.rise_K[node] as number;
    const plates = [nodes.before, nodes.after].filter((node) => node >= 0).map(rise);
    const plateRise_K = settled(plates.reduce((sum, each) => sum + each, 0) / plates.length);
    const wallRise_K = settled(rise(path.wall));
    const air = {
      G_WPerK: sink.carry_WPerK,
      fromRise_K: riseOf(bank, nodes.air, place),
      toRise_K: always(0),
    };
    carried.push(
      t.balance(wattsBetween, place, air, heat.sinks[s]?.heat_W ?? 0),
      t.balance(gapCarried, place, {
        carry_WPerK: shell.carry_WPerK,
        toGap_WPerK: shell.toGap_WPerK,
        plateRise_K,
        wallRise_K,
      }),
    );
    given.push(
      t.balance(givenOff, place, {
        out_WPerK: shell.outwards_WPerK,
        wallRise_K,
        roomRise_K,
        outOffset_W: shell.outwardsOffset_W,
        up_WPerK: shell.upwards_WPerK,
        plateRise_K,
        upOffset_W: shell.upwardsOffset_W,
      }),
    );
  });
  const box = t.at('box');
  const carried_W = t.balance(wattSum, box, numbered('power_W', carried), heat.carried_W);
  t.figure('carried', null, carried_W);
  t.figure('shell', null, t.balance(wattSum, box, numbered('power_W', given), heat.shell_W));
  const { flow, path } = t.work;
  const mixed = {
    hottest_K: settled(hottest_K(t.work)),
    entering_K,
    carried_W,
    massFlow_kgPerS: settled(flow.massFlow[path.fanLink] as number),
    cp_JPerKgK: meanCp(t),
  };
  const exhaust_K = t.balance(exhaustMix, box, mixed, heat.exhaust_K);
  t.figure('exhaust', null, exhaust_K);
  return exhaust_K;
}
