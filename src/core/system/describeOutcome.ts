import { massImbalance } from '../airflow/network.ts';
import type { PlateContact } from "./heatPath.ts";
import { judge, judgeLimits } from './limits.ts';
import { collectNotes, usedCards } from './notes.ts';
import { fanLaw, fanPressureAt, freeFlow_m3PerS, stallBelow_m3PerS } from './operatingPoints.ts';
import type {
  AirOutcome,
  HeatOutcome,
  Intersection,
  Passage,
  PassageKind,
  PositionOutcome,
  Rung,
  SinkOutcome,
  Solved,
  Stage,
} from './outcome.ts';
import type { Work } from './work.ts';

/** Reads the settled networks out into the plain answer. Computes nothing new but sums and differences. */
export function describeOutcome(work: Work, intersections: readonly Intersection[]): Solved {
  const air = describeAir(work, intersections);
  const heat = describeHeat(work);
  const limits = judgeLimits(work.input, air, heat, work.load.voltage_V);
  return {
    ok: true,
    air,
    heat,
    limits,
    verdict: judge(limits),
    notes: collectNotes(work, air, heat),
    used: usedCards(work),
    balance: {
      air: massImbalance(work.path, work.flow) / air.massFlow_kgPerS,
      heat: heatImbalance(work, heat, air),
      iterations: work.iterations,
    },
  };
}

function describeAir(work: Work, intersections: readonly Intersection[]): AirOutcome {
  const { path, flow } = work;
  const fanFlow = flow.massFlow[path.fanLink] as number;
  const flow_m3PerS = fanFlow / work.room.rho_kgPerM3;
  const passages: Passage[] = [];
  const stages: Stage[] = [];
  const share: Record<PassageKind, number> = { fins: 0, side: 0, end: 0, between: 0, leak: 0 };
  for (let i = 0; i < path.links.length; i++) {
    const link = path.links[i] as (typeof path.links)[number];
    const q = flow.massFlow[i] as number;
    const rho = flow.rho[i] as number;
    const velocity = q / (rho * link.area_m2);
    if (link.stage) stages.push({ key: link.stage, dp_Pa: flow.drop[i] as number, velocity_mPerS: velocity });
    if (!link.passage) continue;
    const part = q / fanFlow;
    share[link.passage.kind] += part;
    passages.push({
      kind: link.passage.kind,
      index: link.passage.index,
      massFlow_kgPerS: q,
      share: part,
      velocity_mPerS: velocity,
      reynolds: (rho * Math.abs(velocity) * link.hydraulic_m) / (flow.mu[i] as number),
      area_m2: link.area_m2,
    });
  }
  const under = path.links.find((link) => link.passage)?.from ?? 0;
  stages.push({
    key: 'bank',
    dp_Pa: (flow.head[under] as number) - (flow.head[path.aboveNode] as number),
    velocity_mPerS: passages.find((passage) => passage.kind === 'fins')?.velocity_mPerS ?? 0,
  });
  return {
    flow_m3PerS,
    massFlow_kgPerS: fanFlow,
    fanPressure_Pa: fanPressureAt(work, flow_m3PerS),
    fanSpeedRatio: fanLaw(work).speedRatio,
    freeFlow_m3PerS: freeFlow_m3PerS(work),
    shutOff_Pa: fanPressureAt(work, 0),
    stallBelow_m3PerS: stallBelow_m3PerS(work),
    intersections,
    stages,
    passages,
    share,
    rho_kgPerM3: work.room.rho_kgPerM3,
    p_Pa: work.p_Pa,
  };
}

function describeHeat(work: Work): HeatOutcome {
  const { heat, input, load } = work;
  const positions = heat.positions.map((nodes, index): PositionOutcome => {
    const T = heat.network.T_K;
    const film_K = T[nodes.film] as number;
    const joint_K = T[nodes.joint] as number;
    const filmSide_W = contactFlow_W(work, nodes.filmContact, film_K);
    const second_K = input.secondFace.way === 'tabs' ? joint_K : (T[nodes.body] as number);
    const secondSide_W = contactFlow_W(work, nodes.secondContact, second_K);
    return {
      index,
      on: (input.positions[index] as (typeof input.positions)[number]).on,
      nominal_W: load.nominal_W[index] as number,
      worst_W: load.worst_W[index] as number,
      power_W: work.power_W[index] as number,
      voltage_V: load.voltage_V[index] as number,
      film_K,
      body_K: T[nodes.body] as number,
      joint_K,
      bond_K: Math.max(
        bondFace_K(nodes.filmContact, film_K, filmSide_W),
        bondFace_K(nodes.secondContact, second_K, secondSide_W),
      ),
      filmSide_W,
      secondSide_W,
    };
  });
  let hottest = 0;
  positions.forEach((p, i) => {
    if (p.film_K > (positions[hottest] as PositionOutcome).film_K) hottest = i;
  });
  return {
    total_W: work.power_W.reduce((sum, p) => sum + p, 0),
    fan_W: work.fan_W,
    room_K: input.room.T_K,
    plenum_K: work.plenum_K,
    exhaust_K: work.exhaust_K,
    positions,
    sinks: heat.sinks.map((_, s) => describeSink(work, s)),
    hottest,
    ladder: ladder(work, hottest),
  };
}

function describeSink(work: Work, s: number): SinkOutcome | null {
  const nodes = work.heat.sinks[s];
  const state = work.sinkHeat[s];
  if (!nodes || !state) return null;
  const { T_K, G_WPerK } = work.heat.network;
  const before_K = nodes.before < 0 ? null : (T_K[nodes.before] as number);
  const after_K = nodes.after < 0 ? null : (T_K[nodes.after] as number);
  const airMean_K = T_K[nodes.air] as number;
  const heat_W = (G_WPerK[nodes.carry] as number) * (airMean_K - work.plenum_K);
  const massFlow = work.flow.massFlow[work.path.finLink[s] as number] as number;
  const carry = Math.max(Math.abs(massFlow), 1e-15) * work.cp_JPerKgK;
  // A plate that is as warm as the air gives no heat to judge by: the two conductances in series say the same.
  const series = 1 / (state.plateToAir_WPerK * state.plates) + 1 / state.carry_WPerK;
  return {
    index: s,
    before_K,
    after_K,
    heat_W,
    massFlow_kgPerS: massFlow,
    airOut_K: work.plenum_K + heat_W / carry,
    airMean_K,
    h_WPerM2K: state.h_WPerM2K,
    finEfficiency: state.finEfficiency,
    R_KPerW: series,
  };
}

/** From room to the hottest film, along the film-face path (the second face where that has no sink). */
function ladder(work: Work, hottest: number): Rung[] {
  const { heat, input } = work;
  const nodes = heat.positions[hottest] as (typeof heat.positions)[number];
  const contact = nodes.filmContact ?? nodes.secondContact;
  const T = heat.network.T_K;
  const film_K = T[nodes.film] as number;
  const rungs: Rung[] = [];
  let at = input.room.T_K;
  const rise = (key: Rung['key'], top_K: number) => {
    rungs.push({ key, dT_K: top_K - at, top_K });
    at = top_K;
  };
  rise('fanHeat', work.plenum_K);
  if (!contact) {
    rise('coating', film_K);
    return rungs;
  }
  const start_K = nodes.filmContact ? film_K : input.secondFace.way === 'tabs' ? (T[nodes.joint] as number) : (T[nodes.body] as number);
  const q = contactFlow_W(work, contact, start_K);
  const sink = heat.sinks[contact.sink];
  rise('airRise', sink ? (T[sink.air] as number) : at);
  rise('finToAir', T[contact.plateNode] as number);
  rise('spreading', start_K - q * (contact.ahead_KPerW + contact.bond_KPerW));
  rise('bond', start_K - q * contact.ahead_KPerW);
  rise('coating', film_K);
  return rungs;
}

/** Chip-side face of a bond line; a contact that carries nothing is as warm as its chip. */
function bondFace_K(contact: PlateContact | null, chip_K: number, q_W: number): number {
  return contact ? chip_K - q_W * contact.ahead_KPerW : 0;
}

function contactFlow_W(work: Work, contact: PlateContact | null, chip_K: number): number {
  if (!contact) return 0;
  const G = work.heat.network.G_WPerK[contact.conductance] as number;
  return G * (chip_K - (work.heat.network.T_K[contact.plateNode] as number));
}

/** Watts of resistors and fan against what the air carries to the room, relative to the watts. */
function heatImbalance(work: Work, heat: HeatOutcome, air: AirOutcome): number {
  const inwards = heat.total_W + heat.fan_W;
  const carried = air.massFlow_kgPerS * work.cp_JPerKgK * (heat.exhaust_K - heat.room_K);
  return inwards > 0 ? Math.abs(inwards - carried) / inwards : 0;
}
