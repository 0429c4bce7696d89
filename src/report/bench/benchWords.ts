import type {
  ModelPart,
  NoAnswer,
  Reading,
  ReadingKind,
  TemperaturePlace,
  Unknown,
} from '../../studies/bench/types.ts';
import type { Said } from '../amount.ts';
import { duration } from '../durations.ts';
import type { Dimension } from '../format.ts';
import { quantity } from '../format.ts';
import { amountOf, saidAs, saidQuantity, saidTemperature } from '../said.ts';
import { factorWords } from '../tolerance/toleranceWords.ts';
import type { UnitSystem } from '../types.ts';
import { fixed, kelvins, temperature, watts } from '../words.ts';

const thin = '\u202f';

/** What may be fitted, in the words of a workshop: a name for lists, the same within a sentence, and what it stands for. */
export const unknownWords: Readonly<
  Record<Unknown, { readonly label: string; readonly name: string; readonly means: string }>
> = {
  bond: {
    label: 'Bond',
    name: 'the bond',
    means:
      'How well every bond line conducts, as a factor on what the design counts on: voids, a thicker line, another glue.',
  },
  leak: {
    label: 'Leak',
    name: 'the leak',
    means: 'How wide the crack under the baffle really is: air that passes the fins by.',
  },
  slot: {
    label: 'Slot',
    name: 'the slot',
    means:
      'What the baffle slot and its turn cost the air, as a factor on the method: burrs, a rounder edge.',
  },
  fan: {
    label: 'Fan',
    name: 'the fan',
    means: 'What the fan moves at any pressure, as a factor on its curve: no two fans are alike.',
  },
  emissivity: {
    label: 'Emissivity',
    name: 'the emissivity',
    means: 'How well sinks and sheet radiate, as a factor: it tells with the fan stopped, hardly else.',
  },
};

const places: Readonly<Record<TemperaturePlace, string>> = {
  onFilm: 'film',
  onTerminal: 'terminal',
  onSink: 'sink',
  onSheet: 'sheet by sink',
  inExhaust: 'exhaust air',
};

const others: Readonly<Record<Exclude<ReadingKind, 'temperature'>, string>> = {
  pressure: 'plenum pressure',
  flow: 'flow',
  voltage: 'volts at the fan',
  sound: 'sound',
};

type Where = Pick<Reading, 'kind' | 'where' | 'number'>;

/** "film 3", "exhaust air", "plenum pressure". */
export function placeWords({ kind, where, number }: Where): string {
  if (kind !== 'temperature') return others[kind];
  if (where === null || where === 'inExhaust') return places.inExhaust;
  return `${places[where]} ${number}`;
}

/** "10 sink 3, 3 min": its number among all readings, and the time for one of the warm-up. */
export function readingName(reading: Where & Pick<Reading, 'index' | 'time_s'>): string {
  const time = reading.time_s === null ? '' : `, ${duration(reading.time_s)}`;
  return `${reading.index + 1} ${placeWords(reading)}${time}`;
}

/** Why there is no computed value, as the end of a sentence. */
export const noAnswerWords: Readonly<Record<NoAnswer, string>> = {
  fanDoesNotStart: 'the fan does not start at these volts',
  noOperatingPoint: 'fan and box do not meet',
  noHeatPath: 'the heat has no way out',
  runaway: 'the box grows hotter than anything here bears',
  notConverged: 'the answer does not settle',
  noSuchResistor: 'the design has no such resistor',
  noSuchSink: 'the design has no such sink',
  noLoad: 'the design has no load that could be scaled to these watts',
  nothingTurns: 'no fan turns, so that there is nothing to hear',
  notFollowed: 'the box cannot be followed through this',
};

/** "8 W, 23 °C, 12 V", and for a reading of the warm-up "after 5 min". */
export function conditionWords(
  { load_W, room_K, fan_V, time_s }: Pick<Reading, 'load_W' | 'room_K' | 'fan_V' | 'time_s'>,
  system: UnitSystem,
): string {
  const run = `${watts(load_W, system)}, ${temperature(room_K, system, 1)}, ${quantity(fan_V, 'voltage', system, 3)}`;
  return time_s === null ? run : `${run}, after ${duration(time_s)}`;
}

/** What scatters a computed value, in a sentence. */
export function partWords(part: ModelPart): string {
  if (part === 'leak') return 'the width of the leak';
  return part === 'sound' ? 'the sound of a fan in a box' : factorWords[part];
}

const dimensions: Readonly<Record<ReadingKind, readonly [itself: Dimension, change: Dimension]>> = {
  temperature: ['temperature', 'temperatureDifference'],
  pressure: ['pressure', 'pressure'],
  flow: ['volumeFlow', 'volumeFlow'],
  voltage: ['voltage', 'voltage'],
  sound: ['soundLevel', 'soundLevel'],
};

const digits = 3;

/** A reading or what was computed for it; temperatures to a tenth. */
export function saidReading(kind: ReadingKind, value: number | null, system: UnitSystem): Said {
  const [dimension] = dimensions[kind];
  if (value === null) return { text: '–', ...amountOf(null, dimension, system) };
  return kind === 'temperature'
    ? saidTemperature(value, system, 1)
    : saidQuantity(value, dimension, system, digits);
}

/** A width or a change without its sign. */
export function sizeWords(kind: ReadingKind, value: number, system: UnitSystem): string {
  const [, dimension] = dimensions[kind];
  return quantity(Math.abs(value), dimension, system, 2);
}

/** A width either way: "±1.5 K". */
export function saidWithin(kind: ReadingKind, value: number, system: UnitSystem): Said {
  return saidAs(`±${sizeWords(kind, value, system)}`, value, dimensions[kind][1], system);
}

/** A difference with its sign: "+4.2 K", temperatures to a tenth as they are read. */
export function saidDifference(kind: ReadingKind, value: number | null, system: UnitSystem): Said {
  if (value === null || kind !== 'temperature') return saidMove(kind, value, system);
  const size = kelvins(Math.abs(value), system, 1);
  return saidAs(`${signOf(value)}${size}`, value, 'temperatureDifference', system);
}

/** The same to two digits, however small. */
export function saidMove(kind: ReadingKind, value: number | null, system: UnitSystem): Said {
  const [, dimension] = dimensions[kind];
  if (value === null) return { text: '–', ...amountOf(null, dimension, system) };
  return saidAs(`${signOf(value)}${sizeWords(kind, value, system)}`, value, dimension, system);
}

function signOf(value: number): string {
  return value < 0 ? '−' : value > 0 ? '+' : '';
}

/** A deviation in widths of the instrument's band: "+1.4 ×". */
export function saidTimesWithin(times: number | null): Said {
  if (times === null) return { text: '–', value: null, unit: '×' };
  const text = `${times > 0 ? '+' : ''}${fixed(times, Math.abs(times) < 9.95 ? 1 : 0)}${thin}×`;
  return { text, value: times, unit: '×' };
}

/** Nothing comes in no more than a million, a chance needs no more digits than one. */
export function chanceWords(chance: number): string {
  if (chance >= 0.01) return `${fixed(100 * chance, 0)} of 100 cases`;
  return chance >= 0.001 ? `${fixed(1000 * chance, 0)} of 1000 cases` : 'fewer than 1 of 1000 cases';
}
