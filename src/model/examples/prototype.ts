import { defaultPosition } from '../defaults.ts';
import type { Design } from '../design.ts';
import { eightResistors } from './eightResistors.ts';

type Temperature = Design['readings']['temperatures'][number];

const run = { load_W: 16, room_K: 296.35, fan_V: 12 };
/** Less at the fan, and the room half a degree warmer by then. */
const slow = { load_W: 16, room_K: 296.85, fan_V: 8 };

function at(
  where: Temperature['where'],
  number: number,
  reading_K: number,
  conditions = run,
  time_s: number | null = null,
): Temperature {
  const timed = { settled: time_s === null, time_s: time_s ?? 1800 };
  return { where, number, reading_K, within_K: 1.5, ...conditions, ...timed };
}

/**
 * Invented: four resistors and what a bench might have shown of them. The readings are the model’s own, with a bond that
 * conducts four fifths and a leak of 0.6 mm, scattered as instruments scatter, and rounded as they show.
 */
export const prototype: Design = {
  ...eightResistors,
  title: 'A prototype on the bench',
  revision: 'A',
  remark: 'Invented example, its readings too: four resistors that run warmer than computed. Why?',
  room: { ...eightResistors.room, T_K: 308.15 },
  positions: Array.from({ length: 4 }, () => ({ ...defaultPosition, power_W: 4 })),
  box: { ...eightResistors.box, length_m: 0.078 },
  readings: {
    temperatures: [
      at('onTerminal', 1, 334.45),
      at('onTerminal', 2, 336.75),
      at('onTerminal', 4, 331.25),
      at('onSink', 1, 306.45),
      at('onSink', 3, 311.55),
      at('onSink', 5, 303.35),
      at('inExhaust', 1, 298.85),
      at('onTerminal', 2, 341.35, slow),
      at('onSink', 3, 317.15, slow),
      at('onSink', 3, 308.55, run, 60),
      at('onSink', 3, 312.35, run, 180),
      at('onSink', 3, 312.75, run, 480),
    ],
    pressures: [{ reading_Pa: 30.8, within_Pa: 1, ...run }],
    flows: [{ reading_m3PerS: 0.004, within_m3PerS: 0.0002, ...run }],
    voltages: [{ reading_V: 11.9, within_V: 0.06, ...run }],
    sounds: [],
  },
};
