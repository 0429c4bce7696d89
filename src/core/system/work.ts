import { type AirProperties, airProperties, createAirProperties } from '../air/airProperties.ts';
import { moistFactor } from '../air/moistFactor.ts';
import { standardPressure_Pa } from '../air/standardPressure_Pa.ts';
import { type AirState, createAirState } from '../airflow/network.ts';
import { prepareNusselt } from '../channel/channelNusselt.ts';
import { speedAtVoltage } from '../fan/speedAtVoltage.ts';
import { type LoadSplit, splitLoad } from '../resistor/splitLoad.ts';
import { type AirPath, buildAirPath } from './airPath.ts';
import { type BankGeometry, bankGeometry } from './geometry.ts';
import { buildHeatPath, type HeatPath } from './heatPath.ts';
import type { SystemInput } from './input.ts';
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
  readonly sinkHeat: readonly (SinkHeat | null)[];
  /** Air of the room, of the plenum, of the exhaust, and in each sink. */
  readonly room: AirProperties;
  readonly plenum: AirProperties;
  readonly exhaust: AirProperties;
  readonly inSink: readonly AirProperties[];
  /** Temperatures of the heat network one iteration ago. */
  readonly before_K: Float64Array;
  plenum_K: number;
  exhaust_K: number;
  /** Watts that the air in the sinks carries away. */
  carried_W: number;
  cp_JPerKgK: number;
  iterations: number;
  /** Kelvin that temperatures may still be off, foretold from the last two iterations. */
  moved_K: number;
}

export function prepareWork(input: SystemInput): Work {
  const bank = bankGeometry(input);
  const path = buildAirPath(input, bank);
  const load = splitLoad({
    kind: input.load.excitation,
    supply: input.load.supply,
    supplyTolerance: input.load.supplyTolerance,
    duty: input.load.duty,
    resistors: input.positions.map(({ part, on, power_W }) => ({
      R_Ohm: part.R_Ohm,
      tolerance: part.tolerance,
      on,
      power_W,
    })),
  });
  const { T_K, altitude_m, relativeHumidity } = input.room;
  const p_Pa = standardPressure_Pa(altitude_m);
  const moist = moistFactor(T_K, p_Pa, relativeHumidity);
  const speed = speedAtVoltage(input.fan.supply_V, input.fan.rated_V, input.fan.start_V);
  const heat = buildHeatPath(input, bank);
  const channel = prepareNusselt(bank.finGap_m, input.sink.finHeight_m, input.sink.length_m);
  const work: Work = {
    input,
    bank,
    path,
    flow: createAirState(path),
    heat,
    load,
    power_W: input.load.atWorst ? load.worst_W : load.nominal_W,
    fan_W: input.fan.power_W * speed * speed * speed,
    p_Pa,
    moist,
    sinkHeat: bank.present.map((here, s) => (here ? createSinkHeat(bank, channel, s) : null)),
    room: createAirProperties(),
    plenum: createAirProperties(),
    exhaust: createAirProperties(),
    inSink: bank.present.map(createAirProperties),
    before_K: new Float64Array(heat.network.nodeCount),
    plenum_K: T_K,
    exhaust_K: T_K,
    carried_W: 0,
    cp_JPerKgK: 1006,
    iterations: 0,
    moved_K: 0,
  };
  for (const air of [work.room, work.plenum, work.exhaust, ...work.inSink])
    airProperties(air, T_K, p_Pa, moist);
  return work;
}

/** Puts density and viscosity of the air that each link carries into the flow state. */
export function spreadAir(work: Work): void {
  const { rho, mu } = work.flow;
  const links = work.path.links;
  for (let i = 0; i < links.length; i++) {
    const where = (links[i] as (typeof links)[number]).air;
    const air =
      where === 'room'
        ? work.room
        : where === 'plenum'
          ? work.plenum
          : where === 'exhaust'
            ? work.exhaust
            : (work.inSink[where] as AirProperties);
    rho[i] = air.rho_kgPerM3;
    mu[i] = air.mu_PaS;
  }
}
