import { type AirProperties, airProperties, createAirProperties } from '../air/airProperties.ts';
import { moistFactor } from '../air/moistFactor.ts';
import { standardPressure_Pa } from '../air/standardPressure_Pa.ts';
import { type AirState, createAirState } from '../airflow/network.ts';
import { prepareNusselt } from '../channel/channelNusselt.ts';
import { draught_Pa } from '../freeConvection/draught_Pa.ts';
import { plateSlope } from '../freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import type { LoadSplit } from '../resistor/splitLoad.ts';
import { type AirPath, buildAirPath, type LinkAir } from './airPath.ts';
import { fanPower_W } from './fans.ts';
import { type BankGeometry, bankGeometry } from './geometry.ts';
import { buildHeatPath, type HeatPath } from './heatPath.ts';
import type { Run, SystemInput } from './input.ts';
import { loadOf } from './loadOf.ts';
import { createShellHeat, outsidePerK, type ShellHeat } from './shell.ts';
import { createSinkHeat, type SinkHeat } from './sinkHeat.ts';

/** Everything the coupled solve reads and writes: the two networks, their state, and the air that joins them. */
export interface Work {
  readonly input: SystemInput;
  readonly bank: BankGeometry;
  readonly path: AirPath;
  readonly flow: AirState;
  readonly heat: HeatPath;
  readonly load: LoadSplit;
  /** Watts of each position that this solve is judged at. */
  readonly power_W: readonly number[];
  readonly fan_W: number;
  readonly p_Pa: number;
  /** Density of the moist room air over that of dry air. */
  readonly moist: number;
  readonly run: Run;
  readonly sinkHeat: readonly (SinkHeat | null)[];
  readonly shellHeat: readonly (ShellHeat | null)[];
  /** Air of the room, of the plenum, in the gaps, of the exhaust, and in each sink. */
  readonly room: AirProperties;
  readonly outsidePerK: number;
  readonly outsideSlope: number;
  readonly plenum: AirProperties;
  readonly gap: AirProperties;
  readonly exhaust: AirProperties;
  readonly inSink: readonly AirProperties[];
  /** Temperatures of the heat network one iteration ago. */
  readonly before_K: Float64Array;
  plenum_K: number;
  /** Air that enters the bank: the plenum's, or the room's where it comes in from above. All rises are over this. */
  entering_K: number;
  exhaust_K: number;
  /** Mean of the air in the gaps beside the row. */
  gap_K: number;
  /** The air comes in above and leaves through the fans: a box turned over, without fans. */
  reversed: boolean;
  /** Whether the metal's warmth answers the flow at once: not while time runs. */
  answers: boolean;
  /** Watts that the air in sinks and gaps carries away, and that leave through walls and opening. */
  carried_W: number;
  shell_W: number;
  cp_JPerKgK: number;
  iterations: number;
  /** Kelvin that temperatures may still be off, foretold from the last two iterations. */
  moved_K: number;
}

export function prepareWork(input: SystemInput, run: Run): Work {
  const bank = bankGeometry(input);
  const path = buildAirPath(input, bank, run);
  const load = loadOf(input);
  const { T_K, altitude_m, pressure_Pa, relativeHumidity } = input.room;
  const p_Pa = pressure_Pa ?? standardPressure_Pa(altitude_m);
  const moist = moistFactor(T_K, p_Pa, relativeHumidity);
  const heat = buildHeatPath(input, bank);
  const channel = prepareNusselt(bank.finGap_m, input.sink.finHeight_m, input.sink.length_m);
  const room = createAirProperties();
  airProperties(room, T_K, p_Pa, moist);
  const work: Work = {
    input,
    bank,
    path,
    flow: createAirState(path),
    heat,
    load,
    power_W: input.load.atWorst ? load.worst_W : load.nominal_W,
    fan_W: path.fans ? fanPower_W(input) : 0,
    p_Pa,
    moist,
    run,
    shellHeat: bank.present.map((here) => (here ? createShellHeat() : null)),
    reversed: false,
    answers: true,
    sinkHeat: bank.present.map((here, s) => (here ? createSinkHeat(bank, channel, s) : null)),
    room,
    outsidePerK: outsidePerK(room, input.sink.length_m),
    outsideSlope: plateSlope(room.prandtl),
    plenum: createAirProperties(),
    gap: createAirProperties(),
    exhaust: createAirProperties(),
    inSink: bank.present.map(createAirProperties),
    before_K: new Float64Array(heat.network.nodeCount),
    plenum_K: T_K,
    entering_K: T_K,
    exhaust_K: T_K,
    gap_K: T_K,
    carried_W: 0,
    shell_W: 0,
    cp_JPerKgK: 1006,
    iterations: 0,
    moved_K: 0,
  };
  for (const air of [work.plenum, work.gap, work.exhaust, ...work.inSink])
    airProperties(air, T_K, p_Pa, moist);
  return work;
}

/** Friction of a given mass of air goes with about this power of its temperature: 1.7 in slow channels, 1 in other losses. */
const thickens = 1.4;

/**
 * Puts density, viscosity and draught of the air that each link carries into the flow state. `fade` foretells how draught and
 * friction answer more flow: the stream cools, by all of its share where air alone takes the watts, less where walls do.
 */
export function spreadAir(work: Work): void {
  const { rho, mu, lift, fade, drop, massFlow } = work.flow;
  const links = work.path.links;
  const cools = airShare(work);
  // What goes round inside the box takes its warmth with it, whatever its flow.
  const within = Math.abs(leavingShare(work));
  for (let i = 0; i < links.length; i++) {
    const link = links[i] as (typeof links)[number];
    const air = airOf(work, link.air);
    rho[i] = air.rho_kgPerM3;
    mu[i] = air.mu_PaS;
    lift[i] = 0;
    fade[i] = 0;
    if (air === work.room || air === work.plenum) continue;
    const gain = draught_Pa(work.room.rho_kgPerM3, air.rho_kgPerM3, link.rise_m);
    lift[i] = gain;
    const q = massFlow[i] as number;
    if (q === 0) continue;
    const cold = work.room.T_K / air.T_K;
    const thinner = gain * q > 0 ? (cold * gain) / q : 0;
    const slower = (thickens * (1 - cold) * (drop[i] as number)) / q;
    const share = work.answers ? cools : streamAnswer(work, link.air);
    fade[i] = share * (link.passage ? within : 1) * (thinner - slower);
  }
}

/** Of the watts given off, what the air takes; where hardly any are, or walls bring some in, rounding must not steer. */
function airShare({ carried_W, shell_W }: Work): number {
  const given_W = carried_W + shell_W;
  return given_W > 0 ? Math.min(1, Math.max(0, carried_W / given_W)) : 1;
}

/**
 * Air that goes round inside the box, up one passage and down another, carries nothing away: of every stream that goes the
 * way of the whole, this share counts, and of one against it nothing. Negative where the whole goes down.
 */
export function leavingShare({ path, flow }: Work): number {
  const whole = flow.massFlow[path.fanLink] as number;
  const way = whole < 0 ? -1 : 1;
  let sum = 0;
  for (let i = 0; i < path.links.length; i++) {
    if ((path.links[i] as (typeof path.links)[number]).passage === null) continue;
    sum += Math.max(0, way * (flow.massFlow[i] as number));
  }
  return sum > 0 ? way * Math.min(1, Math.abs(whole) / sum) : way;
}

/** How much of its warmth a stream loses as it grows while the metal beside it keeps its temperature: all of it where it is fast. */
function streamAnswer(work: Work, where: LinkAir): number {
  const sink =
    work.sinkHeat[typeof where === 'number' ? where : work.sinkHeat.findIndex((each) => each !== null)];
  if (!sink) return 0;
  const conducted = sink.plateToAir_WPerK * sink.plates;
  return sink.carry_WPerK / (conducted + sink.carry_WPerK + 1e-12);
}

function airOf(work: Work, where: LinkAir): AirProperties {
  if (typeof where === 'number') return work.inSink[where] as AirProperties;
  if (where === 'gap') return work.gap;
  if (work.reversed) return where === 'exhaust' ? work.room : work.exhaust;
  return where === 'room' ? work.room : where === 'plenum' ? work.plenum : work.exhaust;
}
