import { defineCard } from '../card.ts';

export type LoadKind =
  | 'wattsEach'
  | 'seriesVolts'
  | 'seriesAmps'
  | 'parallelVolts'
  | 'parallelAmps'
  | 'switched';

export interface LoadResistor {
  readonly R_Ohm: number;
  readonly tolerance: number;
  readonly on: boolean;
  readonly power_W: number;
}

export interface Load {
  readonly kind: LoadKind;
  /** Volts or amps, as the kind asks for. */
  readonly supply: number;
  readonly supplyTolerance: number;
  readonly duty: number;
  readonly resistors: readonly LoadResistor[];
}

export interface LoadSplit {
  /** Mean watts of each position, nominal and at the worst corner of the tolerances for that position. */
  readonly nominal_W: readonly number[];
  readonly worst_W: readonly number[];
  /** Most volts that stand across each element, and most amps through it, while it is on. */
  readonly voltage_V: readonly number[];
  readonly current_A: readonly number[];
  /** Nominal mean watts of all positions together. */
  readonly total_W: number;
}

/**
 * Watts and volts of every resistor. Duty scales mean watts, not volts. In a series string an off resistor is bridged;
 * in a parallel set it is disconnected; `switched` puts each across the supply by itself. The worst corner is taken for
 * each position on its own: all of them together never happen at once, which errs to the warm side.
 */
export function splitLoad(load: Load): LoadSplit {
  const { resistors, duty } = load;
  const nominal_W: number[] = [];
  const worst_W: number[] = [];
  const voltage_V: number[] = [];
  const current_A: number[] = [];
  let total_W = 0;
  const sum = total(load);
  for (let i = 0; i < resistors.length; i++) {
    const resistor = resistors[i] as LoadResistor;
    const peak = resistor.on ? peakWatts(load, resistor, sum, false) : 0;
    const most = resistor.on ? peakWatts(load, resistor, sum, true) : 0;
    nominal_W.push(peak * duty);
    worst_W.push(most * duty);
    voltage_V.push(resistor.on ? mostVolts(load, resistor, sum) : 0);
    current_A.push(resistor.on ? mostAmps(load, resistor, sum) : 0);
    total_W += peak * duty;
  }
  return { nominal_W, worst_W, voltage_V, current_A, total_W };
}

/** All that are on: sum of resistances for a string, of conductances for a set; nominal and at the low end. */
interface Sum {
  readonly nominal: number;
  readonly low: number;
}

function total({ kind, resistors }: Load): Sum {
  let nominal = 0;
  let low = 0;
  for (const { R_Ohm, tolerance, on } of resistors) {
    if (!on) continue;
    if (kind === 'parallelAmps') {
      nominal += 1 / R_Ohm;
      low += 1 / (R_Ohm * (1 + tolerance));
    } else {
      nominal += R_Ohm;
      low += R_Ohm * (1 - tolerance);
    }
  }
  return { nominal, low };
}

function peakWatts(
  load: Load,
  { R_Ohm, tolerance, power_W }: LoadResistor,
  sum: Sum,
  worst: boolean,
): number {
  const supply = load.supply * (worst ? 1 + load.supplyTolerance : 1);
  const low_Ohm = R_Ohm * (1 - tolerance);
  const high_Ohm = R_Ohm * (1 + tolerance);
  switch (load.kind) {
    case 'wattsEach':
      return power_W;
    case 'seriesAmps':
      return supply * supply * (worst ? high_Ohm : R_Ohm);
    case 'parallelVolts':
    case 'switched':
      return (supply * supply) / (worst ? low_Ohm : R_Ohm);
    case 'seriesVolts': {
      if (!worst) return R_Ohm * (supply / sum.nominal) ** 2;
      // P = V²·R/(R + S)² is largest at R = S, and for the least S of the others.
      const others = sum.low - low_Ohm;
      const R = Math.min(high_Ohm, Math.max(low_Ohm, others));
      return R * (supply / (R + others)) ** 2;
    }
    case 'parallelAmps': {
      if (!worst) return (1 / R_Ohm) * (supply / sum.nominal) ** 2;
      // The same with conductances: P = I²·G/(G + S)².
      const others = sum.low - 1 / high_Ohm;
      const G = Math.min(1 / low_Ohm, Math.max(1 / high_Ohm, others));
      return G * (supply / (G + others)) ** 2;
    }
  }
}

function mostVolts(load: Load, { R_Ohm, tolerance, power_W }: LoadResistor, sum: Sum): number {
  const supply = load.supply * (1 + load.supplyTolerance);
  const low_Ohm = R_Ohm * (1 - tolerance);
  const high_Ohm = R_Ohm * (1 + tolerance);
  switch (load.kind) {
    case 'wattsEach':
      return Math.sqrt(power_W * high_Ohm);
    case 'seriesAmps':
      return supply * high_Ohm;
    case 'parallelVolts':
    case 'switched':
      return supply;
    case 'seriesVolts':
      return (supply * high_Ohm) / (sum.low - low_Ohm + high_Ohm);
    case 'parallelAmps':
      return supply / sum.low;
  }
}

function mostAmps(load: Load, { R_Ohm, tolerance, power_W }: LoadResistor, sum: Sum): number {
  const supply = load.supply * (1 + load.supplyTolerance);
  const low_Ohm = R_Ohm * (1 - tolerance);
  switch (load.kind) {
    case 'wattsEach':
      return Math.sqrt(power_W / low_Ohm);
    case 'seriesAmps':
      return supply;
    case 'parallelVolts':
    case 'switched':
      return supply / low_Ohm;
    case 'seriesVolts':
      return supply / sum.low;
    case 'parallelAmps': {
      const others = sum.low - 1 / (R_Ohm * (1 + tolerance));
      return supply / low_Ohm / (others + 1 / low_Ohm);
    }
  }
}

export const card = defineCard({
  id: 'splitLoad',
  title: 'Watts in a resistor',
  equation: 'P = d·I²·R',
  result: { name: 'power', unit: 'W', symbol: 'P' },
  symbols: { current_A: 'I', R_Ohm: 'R', duty: 'd' },
  source: { key: 'ohmJoule', where: 'Ohm’s and Joule’s laws' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: null, from: 'not stated' },
  assumes: ['evenFilmHeat'],
  example: {
    given: { current_A: 0.6, R_Ohm: 10, duty: 1 },
    printed: '3.6',
    kind: 'worked again',
    where: 'worked by hand: 24 V across 40 Ω drive 0.6 A',
  },
  evaluate: ({ current_A, R_Ohm, duty }) => duty * current_A * current_A * R_Ohm,
});
