import { massImbalance } from '../airflow/network.ts';
import type { PlateContact } from './heatPath.ts';
import { judge, judgeLimits } from './limits.ts';
import { usedCards } from './methods.ts';
import { collectNotes } from './notes.ts';
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
      heat: heatImbalance(work, heat),
      iterations: work.iterations,
      moved_K: work.moved_K,
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
    const film_K = nodeTemperature_K(work, nodes.film);
    const body_K = nodeTemperature_K(work, nodes.body);
    const joint_K = nodeTemperature_K(work, nodes.joint);
    const filmSide_W = contactFlow_W(work, nodes.filmContact, film_K);
    const second_K = input.secondFace.way === 'tabs' ? joint_K : body_K;
    const secondSide_W = contactFlow_W(work, nodes.secondContact, second_K);
    return {
      index,
      on: (input.positions[index] as (typeof input.positions)[number]).on,
      nominal_W: load.nominal_W[index] as number,
      worst_W: load.worst_W[index] as number,
      power_W: work.power_W[index] as number,
      voltage_V: load.voltage_V[index] as number,
      film_K,
      body_K,
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
  const { rise_K, G_WPerK } = work.heat.network;
  const before_K = nodes.before < 0 ? null : nodeTemperature_K(work, nodes.before);
  const after_K = nodes.after < 0 ? null : nodeTemperature_K(work, nodes.after);
  const airMean_K = nodeTemperature_K(work, nodes.air);
  const heat_W = (G_WPerK[nodes.carry] as number) * (rise_K[nodes.air] as number);
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
  const at_K = (node: number) => nodeTemperature_K(work, node);
  const film_K = at_K(nodes.film);
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
  const start_K = nodes.filmContact
    ? film_K
    : input.secondFace.way === 'tabs'
      ? at_K(nodes.joint)
      : at_K(nodes.body);
  const q = contactFlow_W(work, contact, start_K);
  const sink = heat.sinks[contact.sink];
  rise('airRise', sink ? at_K(sink.air) : at);
  rise('finToAir', at_K(contact.plateNode));
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
  return G * (chip_K - nodeTemperature_K(work, contact.plateNode));
}

/** The network keeps rises over the entering air. */
function nodeTemperature_K(work: Work, node: number): number {
  return work.plenum_K + (work.heat.network.rise_K[node] as number);
}

/** Watts of the resistors against what the air of the sinks carries away, relative to all watts that come in. */
function heatImbalance(work: Work, heat: HeatOutcome): number {
  const inwards = heat.total_W + heat.fan_W;
  return inwards > 0 ? Math.abs(heat.total_W - work.carried_W) / inwards : 0;
}
