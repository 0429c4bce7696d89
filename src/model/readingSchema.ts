import * as z from 'zod/mini';
import { choice, count, flag, number, rows } from './schemaWords.ts';

/** What was set while a reading was taken; the answer is computed for just that. */
const conditions = {
  load_W: number([0, 1e5], 'Watts', 'Of all resistors together, the mean while it was read.', [0.5, 500]),
  room_K: number([223.15, 353.15], 'Room', 'Air that the fan took in.', [278.15, 318.15]),
  fan_V: number(
    [0, 500],
    'Fan volts',
    'Set at the fan; nil, or below its start voltage, for a fan at a stand.',
    [0, 48],
  ),
};

const within = (most: number, usual: readonly [number, number]) =>
  number(
    [1e-9, most],
    'Within',
    'How far the instrument may be off either way, at 95 % (twice its standard uncertainty).',
    usual,
  );

const temperature = z.strictObject({
  where: choice(
    ['onFilm', 'onTerminal', 'onSink', 'onSheet', 'inExhaust'],
    'Where',
    'On the film or a terminal of a resistor, on a sink’s plate, outside on the sheet beside a sink, in the air that leaves.',
  ),
  number: count([1, 65], 'Number', 'Of the resistor or the sink, counted from the fan.'),
  reading_K: number([200, 900], 'Reading', 'Temperature as measured.', [273.15, 473.15]),
  within_K: within(100, [0.1, 5]),
  ...conditions,
  settled: flag('Settled', 'Nothing moved any more; otherwise a time after everything was switched on.'),
  time_s: number(
    [0, 1e6],
    'After',
    'Time since load and fan were switched on, all parts as warm as the room.',
    [5, 36_000],
  ),
});

const most = 100;

/** Readings of a prototype, by what they measure. None is an input of the box: the answer does not depend on them. */
export const readingsSchema = z.strictObject({
  temperatures: rows(temperature, 0, most),
  pressures: rows(
    z.strictObject({
      reading_Pa: number(
        [-1000, 20_000],
        'Reading',
        'Static pressure in the plenum against the room.',
        [0, 500],
      ),
      within_Pa: within(1000, [0.1, 10]),
      ...conditions,
    }),
    0,
    most,
  ),
  flows: rows(
    z.strictObject({
      reading_m3PerS: number([0, 5], 'Reading', 'Air that the fan takes in.', [1e-4, 0.1]),
      within_m3PerS: within(1, [1e-6, 0.01]),
      ...conditions,
    }),
    0,
    most,
  ),
  voltages: rows(
    z.strictObject({
      reading_V: number([0, 500], 'Reading', 'Measured at the fan itself, while it turned.', [3, 48]),
      within_V: within(50, [0.01, 1]),
      ...conditions,
    }),
    0,
    most,
  ),
  sounds: rows(
    z.strictObject({
      reading_dBA: number([0, 140], 'Reading', 'Sound at the listening distance.', [15, 80]),
      within_dBA: within(20, [0.5, 5]),
      ...conditions,
    }),
    0,
    most,
  ),
});

const factor = (title: string, description: string) => number([0.02, 50], title, description, [0.5, 2]);
const relative = (of: string) =>
  number(
    [0, 10],
    `${of}, within`,
    'Share of it, either way, at 95 %; nil where it was not fitted.',
    [0, 0.5],
  );

/** What a fit to readings has put in place of handbook values; all ones and nils where there was none. */
export const fittedSchema = z.strictObject({
  readings: count([0, 500], 'Fitted to readings', 'How many; nil for a design that was not fitted.'),
  bondFactor: factor('Bond factor', 'On the conductivity of every bond line.'),
  bondWithin: relative('Bond factor'),
  slotFactor: factor('Slot factor', 'On the loss of the baffle slot with its turn.'),
  slotWithin: relative('Slot factor'),
  fanFactor: factor('Fan factor', 'On the flow of all fans at any pressure.'),
  fanWithin: relative('Fan factor'),
  emissivityFactor: factor('Emissivity factor', 'On the emissivities of sinks and sheet.'),
  emissivityWithin: relative('Emissivity factor'),
  leakWithin_m: number(
    [0, 0.05],
    'Leak, within',
    'Of its width, either way, at 95 %; nil where it was not fitted.',
    [0, 0.001],
  ),
});
