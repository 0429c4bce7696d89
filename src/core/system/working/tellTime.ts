import { createMarch, card as heatMarch } from '../../heat/march.ts';
import { solveHeatStep } from '../../heat/network.ts';
import { card as shortPulse } from '../../heat/shortPulseRise_K.ts';
import { card as driftCard } from '../../resistor/resistanceDrift.ts';
import { heatCapacities_JPerK } from '../capacities.ts';
import type { Drift } from '../drift.ts';
import type { PulseOutcome } from '../outcome.ts';
import type { Reached, Timeline, TimePoint } from '../timeline.ts';
import { rectangle } from './balances/contactBalances.ts';
import {
  beyondLayers,
  driftBetween,
  driftOfSet,
  driftOfString,
  momentReached,
  overReference,
  pulseFlux,
  pulseOn,
  pulseTop,
  stillHolds,
} from './balances/timeBalances.ts';
import { always, type Quantity, settled } from './book.ts';
import { numbered, type Telling } from './telling.ts';

/** Film at the end of a pulse. */
export function tellPulse(t: Telling, pulse: PulseOutcome, entering_K: Quantity): Quantity {
  const { input, power_W } = t.work;
  const { part } = input.positions[pulse.position] as (typeof input.positions)[number];
  const place = t.at('resistor', pulse.position);
  const { duty, period_s } = input.load;
  const on_s = t.balance(pulseOn, t.at('box'), { duty, period_s }, pulse.on_s);
  const {
    length_m,
    width_m,
    thickness_m,
    ceramic_WPerMK: k_WPerMK,
    ceramicHeat_JPerM3K: heat_JPerM3K,
  } = part;
  const flux_WPerM2 = t.balance(pulseFlux, place, {
    power_W: settled(power_W[pulse.position] as number),
    duty,
    area_m2: t.balance(rectangle, place, { length_m, width_m }),
  });
  const endlessRise_K = t.card(shortPulse, place, { flux_WPerM2, time_s: on_s, k_WPerMK, heat_JPerM3K });
  const layers_K = pulse.single_K - input.room.T_K - pulse.beyond_K;
  const beyond = {
    endlessRise_K,
    layersRise_K: settled(layers_K),
    on_s,
    thickness_m,
    heat_JPerM3K,
    k_WPerMK,
  };
  const beyondRise_K = t.balance(beyondLayers, place, beyond, pulse.beyond_K);
  const marched_K = pulse.peak_K - pulse.beyond_K - t.work.entering_K;
  const peak_K = t.balance(
    pulseTop,
    place,
    { entering_K, marchedRise_K: settled(marched_K), beyondRise_K },
    pulse.peak_K,
  );
  t.figure('pulse', null, peak_K);
  return peak_K;
}

/** Change of every resistance by self-heating, at the end of a warm-up, and of all together. */
export function tellDrift(t: Telling, drift: Drift): void {
  const last = drift.warmUp.points.at(-1);
  if (!last) return;
  const { positions, room, load } = t.work.input;
  const changes = positions.map(({ part }, r) => {
    const place = t.at('resistor', r);
    const given = { linear_perK: part.tcr_perK, square_perK2: part.tcr2_perK2 };
    const overOf = (T_K: Quantity | number) => t.balance(overReference, place, { T_K });
    const hot = t.card(driftCard, place, { ...given, dT_K: overOf(settled(last.films_K[r] as number)) });
    const cold = t.card(driftCard, place, { ...given, dT_K: overOf(room.T_K) });
    t.figure('drift', r, t.balance(driftBetween, place, { hot, cold }, drift.each[r]));
    return { hot, cold, R_Ohm: part.R_Ohm };
  });
  if (drift.whole === null) return;
  const on = changes.filter((_, r) => positions[r]?.on);
  const all = {
    ...numbered(
      'R_Ohm',
      on.map(({ R_Ohm }) => R_Ohm),
    ),
    ...numbered(
      'hot',
      on.map(({ hot }) => hot),
    ),
    ...numbered(
      'cold',
      on.map(({ cold }) => cold),
    ),
  };
  const inString = load.excitation === 'seriesVolts' || load.excitation === 'seriesAmps';
  t.figure('drift', 'whole', t.balance(inString ? driftOfString : driftOfSet, t.at('box'), all, drift.whole));
}

/** One implicit step of the march, of the hottest film: the first second of a warm-up at the settled flows. */
export function tellMarch(t: Telling, hottest: number): Quantity {
  const { heat, input, bank } = t.work;
  const { network } = heat;
  const { film } = heat.positions[hottest] as (typeof heat.positions)[number];
  const capacity = heatCapacities_JPerK(input, bank, heat);
  const march = createMarch(network, capacity, 1);
  march.rise_K.fill(input.room.T_K - t.work.entering_K);
  const start_K = march.rise_K[film] as number;
  const settled_K = network.rise_K.slice();
  solveHeatStep(network, capacity, march.rise_K, march.step_s);
  const end_K = network.rise_K.slice();
  network.rise_K.set(settled_K);
  let outward = 0;
  let inward = network.power_W[film] as number;
  for (let i = 0; i < network.a.length; i++) {
    const from = network.a[i] as number;
    const to = network.b[i] as number;
    if (from !== film && to !== film) continue;
    const G = network.G_WPerK[i] as number;
    outward += G;
    const other = from === film ? to : from;
    if (other >= 0) inward += G * (end_K[other] as number);
  }
  return t.card(
    heatMarch,
    t.at('resistor', hottest),
    {
      capacity_JPerK: capacity[film] as number,
      step_s: always(march.step_s),
      startRise_K: settled(start_K),
      inward_W: settled(inward),
      outward_WPerK: settled(outward),
    },
    end_K[film],
  );
}

/** When each limit is reached after the fans stop, and the time that leaves to act. */
export function tellReached(
  t: Telling,
  { points }: Timeline,
  reached: readonly Reached[],
  march: Quantity,
): void {
  let acted = false;
  for (const { key, time_s } of reached) {
    if (time_s === null) continue;
    const after = points.findIndex((point) => point.time_s >= time_s && point.time_s > 0);
    const before_s = after > 0 ? (points[after - 1] as TimePoint).time_s : 0;
    const after_s = after > 0 ? (points[after] as TimePoint).time_s : 1;
    const share = settled((time_s - before_s) / (after_s - before_s));
    const given = { before_s: settled(before_s), share, after_s: settled(after_s) };
    const moment = t.balance(momentReached, t.at('limit', undefined, key), given, time_s);
    t.figure('reached', key, moment, [march]);
    // What a maker has time for is a part: warm exhaust air harms none by itself.
    if (acted || key === 'exhaust') continue;
    t.figure('act', null, moment, [march]);
    acted = true;
  }
  if (acted) return;
  const margins = Object.values(points.at(-1)?.margins_K ?? {});
  const least_K = settled(margins.length > 0 ? Math.min(...margins) : 0);
  t.figure('act', null, t.balance(stillHolds, t.at('box'), { least_K }), [march]);
}
