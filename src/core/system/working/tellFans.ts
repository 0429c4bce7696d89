import { prepareFanCurve } from '../../fan/fanCurve.ts';
import { card as fanGroup } from '../../fan/fanGroup.ts';
import { card as fanLaws } from '../../fan/fanPressure.ts';
import { card as obstructed } from '../../fan/obstructedShare.ts';
import { card as fanSpeed } from '../../fan/speedAtVoltage.ts';
import { card as bladePass } from '../../sound/bladePassFrequency_Hz.ts';
import { card as soundAtDistance } from '../../sound/soundAtDistance_dBA.ts';
import { card as soundAtSpeed } from '../../sound/soundAtSpeed_dBA.ts';
import { card as soundSum } from '../../sound/soundSum_dBA.ts';
import { type BoxFan, boxFans } from '../fans.ts';
import { fanLaw } from '../operatingPoints.ts';
import type { AirOutcome, FanOutcome } from '../outcome.ts';
import {
  fanWatts,
  flowAtRated,
  flowOfOne,
  freeDelivery,
  nearestWall,
  pressureByFans,
  sharedByFans,
  soundEnergy,
  turns,
} from './balances/fanBalances.ts';
import { wattSum } from './balances/loadBalances.ts';
import { always, type Quantity, settled } from './book.ts';
import { readCurve } from './readCurve.ts';
import { roomAir } from './tellAir.ts';
import { numbered, type Telling } from './telling.ts';

export interface FansTold {
  readonly pressure_Pa: Quantity;
  readonly power_W: Quantity;
}

/** Fans that turn: speed, watts, pressure at the flow of the answer, sound. */
export function tellFans(t: Telling, air: AirOutcome): FansTold {
  const fans = boxFans(t.work.input);
  const speeds = fans.map((fan, index) => tellSpeed(t, fan, index));
  const watts = fans.map(({ kind, sideBySide, inARow }, index) =>
    t.balance(fanWatts, t.at('fan', index), {
      count: sideBySide * inARow,
      rated_W: kind.power_W,
      speedRatio: speeds[index] as Quantity,
    }),
  );
  const power_W = t.balance(wattSum, t.at('fan'), numbered('power_W', watts), t.work.fan_W);
  t.figure('fanWatts', null, power_W);
  const pressure_Pa = pressureAt(t, speeds, settled(air.flow_m3PerS), air.fanPressure_Pa);
  t.figure('fanPressure', null, pressure_Pa);
  t.figure('shutOff', null, pressureAt(t, speeds, always(0), air.shutOff_Pa));
  const law = fanLaw(t.work);
  const given = { factor: law.flowFactor, end_m3PerS: law.curve.freeFlow_m3PerS };
  t.figure('freeFlow', null, t.balance(freeDelivery, t.at('fan'), given, air.freeFlow_m3PerS));
  tellEach(t, fans, speeds, air);
  tellSound(t, fans, speeds, air);
  if (air.obstructed > 0) {
    const { inletSpace_m, outletSpace_m, opening_m } = t.work.input.fan;
    const space_m = t.balance(nearestWall, t.at('fan'), { inlet_m: inletSpace_m, outlet_m: outletSpace_m });
    const share = t.card(obstructed, t.at('fan'), { space_m, diameter_m: opening_m }, air.obstructed);
    t.figure('obstructed', null, share);
  }
  return { pressure_Pa, power_W };
}

function tellSpeed(t: Telling, { kind, speedRatio }: BoxFan, index: number): Quantity {
  const { fan, load } = t.work.input;
  const given = {
    supply_V: kind.supply_V,
    rated_V: kind.rated_V,
    start_V: kind.start_V,
    sag: load.atWorst ? fan.supplySag : 0,
    speedLoss: fan.speedLoss,
  };
  const speed = t.card(fanSpeed, t.at('fan', index), given, speedRatio);
  t.figure('speed', index, speed);
  return speed;
}

/** Pressure of all fans together. Equal ones are read off their own curve, different ones off their joined one. */
function pressureAt(
  t: Telling,
  speeds: readonly Quantity[],
  flow_m3PerS: Quantity | number,
  value: number,
): Quantity {
  const place = t.at('fan');
  const [first, ...others] = boxFans(t.work.input);
  const factor = t.work.input.factors.fanFlow;
  const rho_kgPerM3 = roomAir(t).rho();
  if (others.length > 0 || first === undefined) {
    const at = t.balance(flowAtRated, place, { flow_m3PerS, factor, speedRatio: always(1) });
    const p0_Pa = readCurve(t, place, fanLaw(t.work).curve.curve, at);
    return t.card(fanLaws, place, { p0_Pa, speedRatio: always(1), rho_kgPerM3 }, value);
  }
  const speedRatio = speeds[0] as Quantity;
  const { kind, sideBySide, inARow } = first;
  const own = t.balance(flowOfOne, place, { flow_m3PerS, sideBySide });
  const at = t.balance(flowAtRated, place, { flow_m3PerS: own, factor, speedRatio });
  const p0_Pa = readCurve(t, place, prepareFanCurve(kind.curve).curve, at);
  const each_Pa = t.card(fanLaws, place, { p0_Pa, speedRatio, rho_kgPerM3 }, value / inARow);
  return sideBySide * inARow === 1
    ? each_Pa
    : t.card(fanGroup, place, { each_Pa, inARow, behind_Pa: always(0) }, value);
}

/** What every kind does by itself. */
function tellEach(t: Telling, fans: readonly BoxFan[], speeds: readonly Quantity[], air: AirOutcome): void {
  const pressures = fans.map((fan, index) =>
    tellShare(t, fan, speeds[index] as Quantity, air.fans[index] as FanOutcome, air),
  );
  if (fans.length > 1) tellGroup(t, fans, pressures);
  fans.forEach(({ kind, speedRatio }, index) => {
    if (!(speedRatio > 0)) return;
    const place = t.at('fan', index);
    const speed = speeds[index] as Quantity;
    const rotation_PerS = t.balance(turns, place, { speedRatio: speed, rated_PerS: kind.rotation_PerS });
    const tone = t.card(
      bladePass,
      place,
      { blades: kind.blades, rotation_PerS },
      air.fans[index]?.bladePass_Hz,
    );
    t.figure('bladePass', index, tone);
  });
}

function tellShare(
  t: Telling,
  { kind, sideBySide }: BoxFan,
  speedRatio: Quantity,
  share: FanOutcome,
  air: AirOutcome,
): Quantity {
  const place = t.at('fan', share.index);
  if (air.fans.length > 1) {
    const flow = t.balance(sharedByFans, place, { shared_m3PerS: settled(share.flow_m3PerS) });
    t.figure('fanFlow', share.index, flow);
    const dp = t.balance(pressureByFans, place, { shared_Pa: settled(share.dp_Pa) });
    t.figure('fanDp', share.index, dp);
    return dp;
  }
  const given = { flow_m3PerS: settled(air.flow_m3PerS), sideBySide };
  const flow = t.balance(flowOfOne, place, given, share.flow_m3PerS);
  t.figure('fanFlow', share.index, flow);
  const factor = t.work.input.factors.fanFlow;
  const at = t.balance(flowAtRated, place, { flow_m3PerS: flow, factor, speedRatio });
  const p0_Pa = readCurve(t, place, prepareFanCurve(kind.curve).curve, at);
  const dp = t.card(fanLaws, place, { p0_Pa, speedRatio, rho_kgPerM3: roomAir(t).rho() }, share.dp_Pa);
  t.figure('fanDp', share.index, dp);
  return dp;
}

/** Different kinds: the pressure of the front ones, and what those behind add. */
function tellGroup(t: Telling, fans: readonly BoxFan[], pressures: readonly Quantity[]): void {
  const behind = fans.flatMap(({ place }, index) =>
    place === 'behind' ? [pressures[index] as Quantity] : [],
  );
  const [first] = fans;
  if (!first) return;
  t.card(fanGroup, t.at('fan'), {
    each_Pa: pressures[0] as Quantity,
    inARow: first.inARow,
    behind_Pa: behind.length === 1 ? (behind[0] as Quantity) : sumOf(behind),
  });
}

function sumOf(quantities: readonly Quantity[]): Quantity {
  return settled(quantities.reduce((sum, { value }) => sum + value, 0));
}

function tellSound(t: Telling, fans: readonly BoxFan[], speeds: readonly Quantity[], air: AirOutcome): void {
  const heard = fans.flatMap((fan, index) => (fan.speedRatio > 0 ? [{ fan, index }] : []));
  const count = fans.reduce((sum, { sideBySide, inARow }) => sum + sideBySide * inARow, 0);
  let energy: Quantity = always(0);
  heard.forEach(({ fan, index }, i) => {
    const place = t.at('fan', index);
    const { sound_dBA, soundAt_m } = fan.kind;
    const speedRatio = speeds[index] as Quantity;
    const near_dBA = t.card(soundAtSpeed, place, { level_dBA: sound_dBA, speedRatio });
    const { listening_m } = t.work.input.room;
    const level_dBA = t.card(soundAtDistance, place, {
      level_dBA: near_dBA,
      from_m: soundAt_m,
      to_m: listening_m,
    });
    const own = { count: fan.sideBySide * fan.inARow, level_dBA };
    if (i < heard.length - 1) energy = t.balance(soundEnergy, place, { before: energy, ...own });
    else if (count === 1) t.figure('sound', null, level_dBA);
    else {
      const all = t.card(soundSum, t.at('fan'), { othersEnergy: energy, ...own }, air.sound_dBA ?? 0);
      t.figure('sound', null, all);
    }
  });
}
