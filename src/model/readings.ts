import type { Design } from './design.ts';

/** The lists of readings, by what they measure. */
export type ReadingList = keyof Design['readings'];
export type ReadingRow<L extends ReadingList = ReadingList> = Design['readings'][L][number];

export type Conditions = Pick<ReadingRow, 'load_W' | 'room_K' | 'fan_V'>;
export type ConditionKey = keyof Conditions;

/** In the order in which they are shown and counted. */
export const readingLists: readonly ReadingList[] = [
  'temperatures',
  'pressures',
  'flows',
  'voltages',
  'sounds',
];

export const conditionKeys: readonly ConditionKey[] = ['load_W', 'room_K', 'fan_V'];

/** Under which keys a list keeps what was read, and how far the instrument may be off. */
export const readingKeys = {
  temperatures: { reading: 'reading_K', within: 'within_K' },
  pressures: { reading: 'reading_Pa', within: 'within_Pa' },
  flows: { reading: 'reading_m3PerS', within: 'within_m3PerS' },
  voltages: { reading: 'reading_V', within: 'within_V' },
  sounds: { reading: 'reading_dBA', within: 'within_dBA' },
} as const satisfies Record<ReadingList, { reading: string; within: string }>;

/**
 * An ordinary instrument, 95 % either way: a thermocouple of class 1, a small manometer, a flow taken by bag or orifice, a
 * hand-held multimeter, a sound meter of class 2 read by hand. Common practice, no source but for the thermocouple.
 */
const ordinary: Readonly<Record<ReadingList, { readonly least: number; readonly share: number }>> = {
  temperatures: { least: 1.5, share: 0 },
  pressures: { least: 1, share: 0 },
  flows: { least: 1e-5, share: 0.05 },
  voltages: { least: 0.01, share: 0.005 },
  sounds: { least: 1.5, share: 0 },
};

/** What such an instrument may be off at this reading, in the unit of the list: K, Pa, m³/s, V, dB(A). */
export function ordinaryWithin(list: ReadingList, reading: number): number {
  const { least, share } = ordinary[list];
  return Number(Math.max(least, share * Math.abs(reading)).toPrecision(6));
}

export type Place = Design['readings']['temperatures'][number]['where'];

/** Numbers that a place may have in a design, counted from the fan: of its resistors, of its sinks; 1 where there is but one. */
export function placeNumbers({ positions, sink }: Design, where: Place): readonly number[] {
  const upTo = (count: number) => Array.from({ length: count }, (_, at) => at + 1);
  switch (where) {
    case 'onFilm':
    case 'onTerminal':
      return upTo(positions.length);
    case 'onSink':
    case 'onSheet':
      return upTo(positions.length + 1).filter(
        (number) => (number > 1 || sink.first) && (number <= positions.length || sink.last),
      );
    case 'inExhaust':
      return [1];
  }
}

/** How many readings a design has, of all kinds. */
export function readingCount({ readings }: Design): number {
  return readingLists.reduce((sum, list) => sum + readings[list].length, 0);
}
