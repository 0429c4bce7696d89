import { card as nusseltDeveloping } from '../../channel/nusseltDeveloping.ts';
import { card as nusseltTurbulent } from '../../channel/nusseltTurbulent.ts';
import { laminarUpTo, turbulentFrom } from '../../channel/passageDrop.ts';
import { card as finBetweenPlates } from '../../fins/finBetweenPlates.ts';
import { card as warming } from '../../fins/sinkAirConductance_WPerK.ts';
import type { SinkHeat } from '../sinkHeat.ts';
import { leavingShare } from '../work.ts';
import { airSpeed, hydraulicDiameter, reynoldsNumber, sideRatio } from './balances/pathBalances.ts';
import {
  acrossAll,
  bothPlates,
  capacityFlow,
  efficiencyOfFin,
  finAcross,
  heatTransfer,
  largerNusselt,
  leavingAir,
  lengthInDiameters,
  nusseltOnDiameter,
  plateCoefficient,
  plateToAir,
  sinkResistance,
  thermalEntrance,
  transitionNusselt,
} from './balances/sinkBalances.ts';
import { always, type Place, type Quantity, settled } from './book.ts';
import { meanCp, sinkAir } from './tellAir.ts';
import type { Telling } from './telling.ts';
import { finGapOf } from './tellLosses.ts';

/** Conductances of one sink at its flow, and what the next steps need of it. */
export interface SinkTold {
  readonly plateToAir_WPerK: Quantity;
  /** Through the fins; `null` with one plate. */
  readonly across_WPerK: Quantity | null;
  readonly carry_WPerK: Quantity;
  readonly capacityFlow_WPerK: Quantity;
  readonly plateH_WPerM2K: Quantity;
}

/** One sink of the row; `null` where there is none. */
export function tellSink(t: Telling, s: number): SinkTold | null {
  const { work } = t;
  const state = work.sinkHeat[s];
  if (!state) return null;
  const place = t.at('sink', s);
  const { sink, factors } = work.input;
  const { finHeight_m: height_m, finThickness_m: thickness_m, length_m, k_WPerMK } = sink;
  const gap_m = finGapOf(t);
  const { channels } = work.bank;
  const { plates } = state;
  const hydraulic_m = t.balance(hydraulicDiameter, place, { gap_m, height_m }, state.channel.hydraulic_m);
  const nusselt = tellNusselt({ t, place, s, state, gap_m, hydraulic_m });
  const air = sinkAir(t, s);
  const h_WPerM2K = t.balance(
    heatTransfer,
    place,
    { factor: factors.channelHeat, nusselt, k_WPerMK: air.k(), hydraulic_m },
    state.h_WPerM2K,
  );
  t.figure('coefficient', s, h_WPerM2K);
  const fin = { h_WPerM2K, k_WPerMK, thickness_m, height_m, length_m };
  const fin_WPerK = t.card(finBetweenPlates, place, { ...fin, plates });
  const efficiency = t.balance(
    efficiencyOfFin,
    place,
    { fin_WPerK, plates, h_WPerM2K, height_m, length_m },
    state.finEfficiency,
  );
  t.figure('efficiency', s, efficiency);
  const onPlate = { channels, gap_m, length_m, h_WPerM2K, fin_WPerK };
  const plateToAir_WPerK = t.balance(plateToAir, place, onPlate, state.plateToAir_WPerK);
  const UA_WPerK = t.balance(bothPlates, place, { plates, plateToAir_WPerK });
  const leaving_kgPerS = tellLeaving(t, place, s, state);
  const cp_JPerKgK = meanCp(t);
  const capacityFlow_WPerK = t.balance(capacityFlow, place, { massFlow_kgPerS: leaving_kgPerS, cp_JPerKgK });
  const carry_WPerK = t.card(warming, place, { UA_WPerK, capacityFlow_WPerK }, state.carry_WPerK);
  t.figure('resistance', s, t.balance(sinkResistance, place, { UA_WPerK, carry_WPerK }));
  const across_WPerK =
    plates === 2
      ? t.balance(
          acrossAll,
          place,
          { channels, fin_WPerK: t.balance(finAcross, place, fin) },
          state.across_WPerK,
        )
      : null;
  const plate = { plateToAir_WPerK, width_m: sink.width_m, length_m };
  const plateH_WPerM2K = t.balance(plateCoefficient, place, plate, state.plateH_WPerM2K);
  return { plateToAir_WPerK, across_WPerK, carry_WPerK, capacityFlow_WPerK, plateH_WPerM2K };
}

/** Of the air in the fins, what leaves the box. */
function tellLeaving(t: Telling, place: Place, s: number, state: SinkHeat): Quantity {
  const { flow, path } = t.work;
  const massFlow_kgPerS = settled(flow.massFlow[path.finLink[s] as number] as number);
  const given = { massFlow_kgPerS, leavingShare: settled(leavingShare(t.work)) };
  return t.balance(leavingAir, place, given, state.leaving_kgPerS);
}

interface Channel {
  readonly t: Telling;
  readonly place: Place;
  readonly s: number;
  readonly state: SinkHeat;
  readonly gap_m: Quantity;
  readonly hydraulic_m: Quantity;
}

function tellNusselt(channel: Channel): Quantity {
  const { t, place, s, hydraulic_m } = channel;
  const { work } = t;
  const { length_m } = work.input.sink;
  const air = sinkAir(t, s);
  const rho_kgPerM3 = air.rho();
  const flow = Math.abs(work.flow.massFlow[work.path.finLink[s] as number] as number);
  const link = work.path.links[work.path.finLink[s] as number];
  const velocity_mPerS = t.balance(airSpeed, place, {
    massFlow_kgPerS: settled(Math.max(flow, 1e-15)),
    rho_kgPerM3,
    area_m2: link?.area_m2 ?? 0,
  });
  const moving = { rho_kgPerM3, velocity_mPerS, hydraulic_m, mu_PaS: air.mu() };
  const reynolds = t.balance(reynoldsNumber, place, moving);
  const laminar = tellLaminar(channel, reynolds);
  if (reynolds.value <= laminarUpTo) return laminar;
  const prandtl = air.prandtl();
  const lengthOverDiameter = t.balance(lengthInDiameters, place, { length_m, hydraulic_m });
  if (reynolds.value >= turbulentFrom) {
    const turbulent = t.card(nusseltTurbulent, place, { reynolds, prandtl, lengthOverDiameter });
    return t.balance(largerNusselt, place, { laminar, turbulent });
  }
  const end = t.card(nusseltTurbulent, place, {
    reynolds: always(turbulentFrom),
    prandtl,
    lengthOverDiameter,
  });
  const start = tellLaminar(channel, always(laminarUpTo));
  return t.balance(transitionNusselt, place, { laminar, start, end, reynolds });
}

function tellLaminar({ t, place, s, gap_m, hydraulic_m }: Channel, reynolds: Quantity): Quantity {
  const { finHeight_m: height_m, length_m } = t.work.input.sink;
  const prandtl = sinkAir(t, s).prandtl();
  const aspect = t.balance(sideRatio, place, { gap_m, height_m });
  const zStar = t.balance(thermalEntrance, place, {
    length_m,
    hydraulic_m,
    gap_m,
    height_m,
    reynolds,
    prandtl,
  });
  const onRoot = t.card(nusseltDeveloping, place, { aspect, zStar, prandtl });
  return t.balance(nusseltOnDiameter, place, { onRoot, hydraulic_m, gap_m, height_m });
}
