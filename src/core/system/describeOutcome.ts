import { linkDrop } from '../airflow/linkLaw.ts';
import { largestFlow, massImbalance } from '../airflow/network.ts';
import { bladePassFrequency_Hz } from '../sound/bladePassFrequency_Hz.ts';
import { groupSound_dBA } from '../sound/groupSound_dBA.ts';
import { boxFans, obstruction, soundSources } from './fans.ts';
import type { PlateContact } from './heatPath.ts';
import { judge, judgeLimits } from './limits.ts';
import { fanPressureAt, freeFlow_m3PerS, stallBelow_m3PerS } from './operatingPoints.ts';
import type {
  AirOutcome,
  FanOutcome,
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
import { pulseResponse } from './pulses.ts';
import type { Work } from './work.ts';

const pair = new Float64Array(2);

/** Reads the settled networks out into the plain answer. Computes nothing new but sums and differences. */
export function describeOutcome(work: Work, intersections: readonly Intersection[]): Solved {
  const air = describeAir(work, intersections);
  const heat = describeHeat(work);
  const pulse = work.run.pulses ? pulseResponse(work) : null;
  const limits = judgeLimits(work.input, air, heat, work.load.voltage_V, pulse);
  return {
    ok: true,
    air,
    heat,
    pulse,
    limits,
    verdict: judge(limits),
    balance: {
      air: massImbalance(work.path, work.flow) / (largestFlow(work.flow) + 1e-15),
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
  let draught_Pa = 0;
  const share: Record<PassageKind, number> = { fins: 0, side: 0, end: 0, between: 0, leak: 0 };
  for (let i = 0; i < path.links.length; i++) {
    const link = path.links[i] as (typeof path.links)[number];
    const q = flow.massFlow[i] as number;
    const rho = flow.rho[i] as number;
    const velocity = q / (rho * link.area_m2);
    if (link.stage) {
      draught_Pa += flow.lift[i] as number;
      // At the flows of the answer, not at those one step before.
      linkDrop(pair, link.law, q, rho, flow.mu[i] as number);
      stages.push({ key: link.stage, dp_Pa: pair[0] as number, velocity_mPerS: velocity });
    }
    if (!link.passage) continue;
    const part = Math.abs(fanFlow) > 1e-15 ? q / fanFlow : 0;
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
  const running = path.fans !== null;
  return {
    running,
    flow_m3PerS,
    massFlow_kgPerS: fanFlow,
    fanPressure_Pa: running ? fanPressureAt(work, flow_m3PerS) : 0,
    draught_Pa,
    plenum_Pa: flow.head[path.plenumNode] as number,
    fanSpeedRatio: running ? (boxFans(work.input)[0]?.speedRatio ?? 0) : 0,
    fans: running ? describeFans(work, flow_m3PerS) : [],
    bridgedDip: path.fans?.bridgedDip ?? false,
    sound_dBA: running ? groupSound_dBA(soundSources(work.input), work.input.room.listening_m) : null,
    obstructed: obstruction(work.input),
    freeFlow_m3PerS: running ? freeFlow_m3PerS(work) : 0,
    shutOff_Pa: running ? fanPressureAt(work, 0) : 0,
    stallBelow_m3PerS: running ? stallBelow_m3PerS(work) : null,
    intersections,
    stages,
    passages,
    share,
    rho_kgPerM3: work.room.rho_kgPerM3,
    p_Pa: work.p_Pa,
  };
}

function describeFans(work: Work, flow_m3PerS: number): FanOutcome[] {
  // A fan that moves more than its curve says stands at a smaller flow of that curve.
  const { fanFlow } = work.input.factors;
  const shares = work.path.fans?.shares(flow_m3PerS / fanFlow, work.room.rho_kgPerM3) ?? [];
  return boxFans(work.input).map(({ kind, sideBySide, inARow, speedRatio }, index) => {
    const share = shares[index];
    return {
      index,
      count: sideBySide * inARow,
      speedRatio,
      flow_m3PerS: (share?.flow_m3PerS ?? 0) * fanFlow,
      dp_Pa: share?.dp_Pa ?? 0,
      backwards: share?.backwards ?? false,
      bladePass_Hz: bladePassFrequency_Hz(kind.blades, kind.rotation_PerS * speedRatio),
    };
  });
}

export function describeHeat(work: Work): HeatOutcome {
  const { heat, input, load } = work;
  const positions = heat.positions.map((nodes, index): PositionOutcome => {
    const film_K = nodeTemperature_K(work, nodes.film);
    const body_K = nodeTemperature_K(work, nodes.body);
    const joint_K = nodeTemperature_K(work, nodes.joint);
    const filmSide_W = contactFlow_W(work, nodes.filmContact, nodes.film);
    const isTabs = input.secondFace.way === 'tabs';
    const second_K = isTabs ? joint_K : body_K;
    const secondSide_W = contactFlow_W(work, nodes.secondContact, isTabs ? nodes.joint : nodes.body);
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
    entering_K: work.entering_K,
    carried_W: work.carried_W,
    shell_W: work.shell_W,
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
  const shell = work.heat.shells[s];
  const wallHeat = work.shellHeat[s];
  if (!nodes || !state || !shell || !wallHeat) return null;
  const facing_K = nodeTemperature_K(work, shell.wall);
  const { rise_K, G_WPerK } = work.heat.network;
  const before_K = nodes.before < 0 ? null : nodeTemperature_K(work, nodes.before);
  const after_K = nodes.after < 0 ? null : nodeTemperature_K(work, nodes.after);
  const airMean_K = nodeTemperature_K(work, nodes.air);
  const heat_W = (G_WPerK[nodes.carry] as number) * (rise_K[nodes.air] as number);
  const massFlow = work.flow.massFlow[work.path.finLink[s] as number] as number;
  const carry = state.leaving_kgPerS * work.cp_JPerKgK;
  // A plate that is as warm as the air gives no heat to judge by: the two conductances in series say the same.
  const series = 1 / (state.plateToAir_WPerK * state.plates) + 1 / state.carry_WPerK;
  return {
    index: s,
    before_K,
    after_K,
    heat_W,
    massFlow_kgPerS: massFlow,
    airOut_K: work.entering_K + heat_W / carry,
    airMean_K,
    facing_K,
    outside_K: work.input.room.T_K + wallHeat.outerShare * (facing_K - work.input.room.T_K),
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
  rise('fanHeat', work.entering_K);
  if (!contact) {
    rise('coating', film_K);
    return rungs;
  }
  const start = nodes.filmContact ? nodes.film : input.secondFace.way === 'tabs' ? nodes.joint : nodes.body;
  const start_K = at_K(start);
  const q = contactFlow_W(work, contact, start);
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

/** From the rises, which keep the digits that temperatures lose. */
function contactFlow_W(work: Work, contact: PlateContact | null, chipNode: number): number {
  if (!contact) return 0;
  const { G_WPerK, rise_K } = work.heat.network;
  const G = G_WPerK[contact.conductance] as number;
  return G * ((rise_K[chipNode] as number) - (rise_K[contact.plateNode] as number));
}

/** The network keeps rises over the entering air. */
function nodeTemperature_K(work: Work, node: number): number {
  return work.entering_K + (work.heat.network.rise_K[node] as number);
}

/** Watts of the resistors against what air and walls take away, relative to all watts that come in. */
function heatImbalance(work: Work, heat: HeatOutcome): number {
  const inwards = heat.total_W + heat.fan_W;
  return inwards > 0 ? Math.abs(heat.total_W - work.carried_W - work.shell_W) / inwards : 0;
}
