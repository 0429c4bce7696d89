import { createMarch, type March, marchStep } from '../heat/march.ts';
import { createHeatNetwork, type HeatNetwork, solveHeatNetwork } from '../heat/network.ts';
import { shortPulseRise_K } from '../heat/shortPulseRise_K.ts';
import { chipCapacity_JPerK, heatCapacities_JPerK } from './capacities.ts';
import type { PartInput } from './input.ts';
import type { PulseOutcome, PulsePoint } from './outcome.ts';
import type { Work } from './work.ts';

/** Layers that the ceramic of a chip is cut into, each thicker than the one before by a factor, the thinnest at the film. */
const layers = 10;
const thickens = 1.6;
const mostCycles = 60;

/** The heat network of the settled box with every chip cut into layers, at conductances that stay as they are. */
interface Fine {
  readonly network: HeatNetwork;
  readonly capacity_JPerK: Float64Array;
  /** New number of each node. */
  readonly place: readonly number[];
}

/**
 * Films under a load that comes and goes: the last cycle of a train that has settled, and one pulse into a cold box. The
 * chips' ceramic is cut into layers fine enough for a microsecond; below that the film sees a solid without an end. Flows and
 * conductances stay those of the mean load.
 * @returns `null` where the load never goes
 */
export function pulseResponse(work: Work): PulseOutcome | null {
  const { duty, period_s } = work.input.load;
  const total_W = work.power_W.reduce((sum, watts) => sum + watts, 0);
  if (duty >= 1 || duty <= 0 || total_W <= 0) return null;
  const on_s = duty * period_s;
  const fine = cutChips(work);
  const single = singlePulse(work, fine, on_s);
  const train = settledTrain(work, fine, on_s, period_s);
  const hottest = hottestOf(train.peaks_K);
  const beyond_K = Math.max(0, endless_K(work, hottest, on_s) - (single.rises_K[hottest] as number));
  return {
    period_s,
    on_s,
    position: hottest,
    peak_K: work.entering_K + (train.peaks_K[hottest] as number) + beyond_K,
    valley_K: work.entering_K + (train.valleys_K[hottest] as number),
    single_K: work.input.room.T_K + (single.rises_K[hottest] as number) + beyond_K,
    beyond_K,
    trace: train.trace(hottest),
    cycles: train.cycles,
  };
}

function cutChips(work: Work): Fine {
  const { heat, input, bank } = work;
  const { network: coarse, positions } = heat;
  const extra = new Map<number, number>();
  for (const { film } of positions) extra.set(film, layers - 1);
  const place: number[] = [];
  let nodes = 0;
  for (let node = 0; node < coarse.nodeCount; node++) {
    place.push(nodes);
    nodes += 1 + (extra.get(node) ?? 0);
  }
  const through = new Set(positions.map((path) => path.through));
  const a: number[] = [];
  const b: number[] = [];
  const G: number[] = [];
  const join = (from: number, to: number, conductance: number) => {
    a.push(from);
    b.push(to);
    G.push(conductance);
  };
  coarse.a.forEach((from, i) => {
    if (through.has(i)) return;
    const to = coarse.b[i] as number;
    join(place[from] as number, to < 0 ? -1 : (place[to] as number), coarse.G_WPerK[i] as number);
  });
  const capacity = new Float64Array(nodes);
  heatCapacities_JPerK(input, bank, heat).forEach((value, node) => {
    capacity[place[node] as number] = value;
  });
  positions.forEach(({ film, body, through: way }, r) => {
    const { part } = input.positions[r] as (typeof input.positions)[number];
    const chip = chipCapacity_JPerK(part);
    const whole = coarse.G_WPerK[way] as number;
    const thinnest = (thickens - 1) / (thickens ** layers - 1);
    const first = place[film] as number;
    const last = place[body] as number;
    const take = (node: number, share: number) => {
      capacity[node] = Math.max(0, (capacity[node] as number) + share * chip);
    };
    take(first, -0.5);
    take(last, -0.5);
    for (let layer = 0; layer < layers; layer++) {
      const share = thinnest * thickens ** layer;
      const from = first + layer;
      const to = layer === layers - 1 ? last : from + 1;
      join(from, to, whole / share);
      take(from, share / 2);
      take(to, share / 2);
    }
  });
  const network = createHeatNetwork(nodes, a, b);
  network.G_WPerK.set(G);
  return { network, capacity_JPerK: capacity, place };
}

/** Powers of the fine network: those of the walls as they are, watts of the films times `share`. */
function setPowers(work: Work, { network, place }: Fine, share: number): void {
  network.power_W.fill(0);
  work.heat.network.power_W.forEach((power, node) => {
    network.power_W[place[node] as number] = power;
  });
  work.heat.positions.forEach(({ film }, r) => {
    network.power_W[place[film] as number] = (work.power_W[r] as number) * share;
  });
}

function filmRises(work: Work, fine: Fine, rise_K: Float64Array): number[] {
  return work.heat.positions.map(({ film }) => rise_K[fine.place[film] as number] as number);
}

/** One pulse, everything at the temperature of the room before: rises of the films over the room at its end. */
function singlePulse(work: Work, fine: Fine, on_s: number): { rises_K: number[] } {
  const room_K = work.input.room.T_K - work.entering_K;
  setPowers(work, fine, 1 / work.input.load.duty);
  fine.network.rise_K.fill(room_K);
  const march = createMarch(fine.network, fine.capacity_JPerK, firstStep_s(on_s));
  go(march, on_s);
  return { rises_K: filmRises(work, fine, march.rise_K).map((rise) => rise - room_K) };
}

interface Train {
  readonly peaks_K: readonly number[];
  readonly valleys_K: readonly number[];
  readonly cycles: number;
  readonly trace: (position: number) => PulsePoint[];
}

/** From the mean temperatures, half of an on phase first, so that the train begins where its middle runs. */
function settledTrain(work: Work, fine: Fine, on_s: number, period_s: number): Train {
  const { network } = fine;
  const { duty } = work.input.load;
  setPowers(work, fine, 1);
  solveHeatNetwork(network);
  const march = createMarch(network, fine.capacity_JPerK, firstStep_s(on_s));
  setPowers(work, fine, 1 / duty);
  go(march, on_s / 2);
  let peaks_K = filmRises(work, fine, march.rise_K);
  let valleys_K = peaks_K;
  let cycles = 0;
  let points: { time_s: number; films_K: number[] }[] = [];
  for (let moved_K = Number.POSITIVE_INFINITY; cycles < mostCycles && moved_K > 0.01; cycles++) {
    points = [];
    const note = (time_s: number) => points.push({ time_s, films_K: filmRises(work, fine, march.rise_K) });
    setPowers(work, fine, 0);
    restart(march, on_s);
    go(march, period_s - on_s, () => note(on_s + march.time_s));
    valleys_K = filmRises(work, fine, march.rise_K);
    setPowers(work, fine, 1 / duty);
    restart(march, on_s);
    note(0);
    go(march, on_s, () => note(march.time_s));
    const before = peaks_K;
    peaks_K = filmRises(work, fine, march.rise_K);
    moved_K = peaks_K.reduce((most, peak, r) => Math.max(most, Math.abs(peak - (before[r] as number))), 0);
  }
  points.sort((first, second) => first.time_s - second.time_s);
  return {
    peaks_K,
    valleys_K,
    cycles,
    trace: (position) =>
      points.map(({ time_s, films_K }) => ({
        time_s,
        film_K: work.entering_K + (films_K[position] as number),
      })),
  };
}

function firstStep_s(on_s: number): number {
  return Math.min(on_s, 1e-3) / 50;
}

function restart(march: March, on_s: number): void {
  march.time_s = 0;
  march.step_s = firstStep_s(on_s);
}

function go(march: March, until_s: number, note?: () => void): void {
  while (march.time_s < until_s && marchStep(march, until_s, 0.1)) note?.();
}

/** A film on a solid without an end: what no cut of the ceramic can follow, for pulses that never see its back. */
function endless_K(work: Work, position: number, on_s: number): number {
  const { part } = work.input.positions[position] as { part: PartInput };
  const { thickness_m, ceramic_WPerMK: k, ceramicHeat_JPerM3K } = part;
  if (on_s > (thickness_m * thickness_m * ceramicHeat_JPerM3K) / (8 * k)) return 0;
  const area_m2 = part.length_m * part.width_m;
  return shortPulseRise_K({
    flux_WPerM2: (work.power_W[position] as number) / work.input.load.duty / area_m2,
    time_s: on_s,
    k_WPerMK: k,
    rho_kgPerM3: 1,
    cp_JPerKgK: ceramicHeat_JPerM3K,
  });
}

function hottestOf(values: readonly number[]): number {
  return values.reduce((most, value, i) => (value > (values[most] as number) ? i : most), 0);
}
