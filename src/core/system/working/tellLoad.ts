import { card as joule } from '../../resistor/splitLoad.ts';
import type { LoadInput, PartInput } from '../input.ts';
import {
  givenWatts,
  highEnd,
  lowEnd,
  mostAmpsFed,
  mostVoltsFed,
  ohmCurrent,
  ohmVolts,
  otherOhms,
  otherOhmsLow,
  setCurrent,
  setVolts,
  stringCurrent,
  voltsOfWatts,
  wattSum,
  worstInSet,
  worstInString,
} from './balances/loadBalances.ts';
import type { Place, Quantity } from './book.ts';
import { numbered, type Telling } from './telling.ts';

/** Watts and volts of every position. */
export interface LoadTold {
  /** That the answer was computed with. */
  readonly power_W: readonly Quantity[];
  readonly voltage_V: readonly Quantity[];
  readonly total_W: Quantity;
}

/** One resistor that is on, with what its watts depend on. */
interface Loaded {
  readonly t: Telling;
  readonly place: Place;
  readonly load: LoadInput;
  readonly part: PartInput;
  /** As fed, the root of the load's scale counted in. */
  readonly supply: number;
  readonly others: readonly PartInput[];
  readonly on: readonly PartInput[];
}

export function tellLoad(t: Telling): LoadTold {
  const { input, load: split, power_W: used } = t.work;
  const { load, positions } = input;
  const on = positions.flatMap(({ part, on: isOn }, r) => (isOn ? [{ part, r }] : []));
  const supply = load.supply * Math.sqrt(load.scale);
  const told = positions.map(({ part, on: isOn, power_W }, r) => {
    const place = t.at('resistor', r);
    const nominal_W = split.nominal_W[r] as number;
    const worst_W = split.worst_W[r] as number;
    const volts_V = split.voltage_V[r] as number;
    const { duty } = load;
    if (!isOn || load.excitation === 'wattsEach') {
      const given_W = isOn ? power_W * load.scale : 0;
      const power = t.balance(givenWatts, place, { given_W, duty }, nominal_W);
      const R_Ohm = t.balance(highEnd, place, { R_Ohm: part.R_Ohm, tolerance: part.tolerance });
      return {
        nominal: power,
        worst: power,
        volts: t.balance(voltsOfWatts, place, { power_W: given_W, R_Ohm }, volts_V),
      };
    }
    const others = on.filter((other) => other.r !== r).map((other) => other.part);
    const each: Loaded = { t, place, load, part, supply, others, on: on.map((other) => other.part) };
    const nominal = nominalCurrent(each);
    const worst = worstCurrent(each);
    return {
      nominal: t.card(joule, place, { current_A: nominal, R_Ohm: part.R_Ohm, duty }, nominal_W),
      worst: t.card(joule, place, { ...worst, duty }, worst_W),
      volts: voltsOf(each, volts_V),
    };
  });
  told.forEach(({ nominal, worst, volts }, r) => {
    t.figure('nominal', r, nominal);
    t.figure('worst', r, worst);
    t.figure('power', r, load.atWorst ? worst : nominal);
    t.figure('voltage', r, volts);
  });
  const power_W = told.map(({ nominal, worst }) => (load.atWorst ? worst : nominal));
  const total_W = t.balance(
    wattSum,
    t.at('box'),
    numbered('power_W', power_W),
    used.reduce((sum, watts) => sum + watts, 0),
  );
  t.figure('total', null, total_W);
  return { power_W, voltage_V: told.map(({ volts }) => volts), total_W };
}

function ohms(parts: readonly PartInput[], tolerances: (part: PartInput) => number) {
  return {
    ...numbered(
      'R_Ohm',
      parts.map(({ R_Ohm }) => R_Ohm),
    ),
    ...numbered('tolerance', parts.map(tolerances)),
  };
}

function nominalCurrent({ t, place, load, part, supply, others }: Loaded): Quantity | number {
  const { R_Ohm } = part;
  switch (load.excitation) {
    case 'wattsEach':
    case 'seriesAmps':
      return supply;
    case 'parallelVolts':
    case 'switched':
      return t.balance(ohmCurrent, place, { supply_V: supply, R_Ohm });
    case 'seriesVolts': {
      const values = others.map((other) => other.R_Ohm);
      const others_Ohm = t.balance(otherOhms, place, numbered('R_Ohm', values));
      return t.balance(stringCurrent, place, { supply_V: supply, R_Ohm, others_Ohm });
    }
    case 'parallelAmps':
      return t.balance(setCurrent, place, { supply_A: supply, R_Ohm, ...ohms(others, () => 0) });
  }
}

/** Current and resistance at the corner of the tolerances where this resistor takes most. */
function worstCurrent(each: Loaded): { current_A: Quantity | number; R_Ohm: Quantity | number } {
  const { t, place, load, part, others } = each;
  const ends = { R_Ohm: part.R_Ohm, tolerance: part.tolerance };
  const low_Ohm = t.balance(lowEnd, place, ends);
  const high_Ohm = t.balance(highEnd, place, ends);
  switch (load.excitation) {
    case 'wattsEach':
    case 'seriesAmps':
      return { current_A: fedAmps(each), R_Ohm: high_Ohm };
    case 'parallelVolts':
    case 'switched':
      return {
        current_A: t.balance(ohmCurrent, place, { supply_V: fedVolts(each), R_Ohm: low_Ohm }),
        R_Ohm: low_Ohm,
      };
    case 'seriesVolts': {
      const others_Ohm = lowOthers(each);
      const R_Ohm = t.balance(worstInString, place, { high_Ohm, low_Ohm, others_Ohm });
      const supply_V = fedVolts(each);
      return { current_A: t.balance(stringCurrent, place, { supply_V, R_Ohm, others_Ohm }), R_Ohm };
    }
    case 'parallelAmps': {
      const beside = ohms(others, ({ tolerance }) => tolerance);
      const R_Ohm = t.balance(worstInSet, place, { high_Ohm, low_Ohm, ...beside });
      return {
        current_A: t.balance(setCurrent, place, { supply_A: fedAmps(each), R_Ohm, ...beside }),
        R_Ohm,
      };
    }
  }
}

function lowOthers({ t, place, others }: Loaded): Quantity {
  return t.balance(
    otherOhmsLow,
    place,
    ohms(others, ({ tolerance }) => tolerance),
  );
}

function fedVolts({ t, load, supply }: Loaded): Quantity {
  return t.balance(mostVoltsFed, t.at('box'), { supply_V: supply, tolerance: load.supplyTolerance });
}

function fedAmps({ t, load, supply }: Loaded): Quantity {
  return t.balance(mostAmpsFed, t.at('box'), { supply_A: supply, tolerance: load.supplyTolerance });
}

/** Most volts that stand across the element while it is on. */
function voltsOf(each: Loaded, volts_V: number): Quantity {
  const { t, place, load, part, on } = each;
  const greatest = () => t.balance(highEnd, place, { R_Ohm: part.R_Ohm, tolerance: part.tolerance });
  switch (load.excitation) {
    case 'parallelVolts':
    case 'switched':
      return fedVolts(each);
    case 'seriesVolts': {
      const high_Ohm = greatest();
      const given = { supply_V: fedVolts(each), R_Ohm: high_Ohm, others_Ohm: lowOthers(each) };
      const current_A = t.balance(stringCurrent, place, given);
      return t.balance(ohmVolts, place, { current_A, R_Ohm: high_Ohm }, volts_V);
    }
    case 'parallelAmps': {
      const all = ohms(on, ({ tolerance }) => tolerance);
      return t.balance(setVolts, t.at('box'), { supply_A: fedAmps(each), ...all }, volts_V);
    }
    default:
      return t.balance(ohmVolts, place, { current_A: fedAmps(each), R_Ohm: greatest() }, volts_V);
  }
}
