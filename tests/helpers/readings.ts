import type { Design } from '../../src/model/design.ts';

const conditions = { load_W: 8, room_K: 296.15, fan_V: 12 };

/** Invented: one reading of every kind. */
export const oneReadingEach: Design['readings'] = {
  temperatures: [
    {
      where: 'onSink',
      number: 2,
      reading_K: 321.15,
      within_K: 1.5,
      ...conditions,
      settled: true,
      time_s: 1800,
    },
  ],
  pressures: [{ reading_Pa: 18, within_Pa: 1, ...conditions }],
  flows: [{ reading_m3PerS: 0.004, within_m3PerS: 0.0002, ...conditions }],
  voltages: [{ reading_V: 11.8, within_V: 0.1, ...conditions }],
  sounds: [{ reading_dBA: 31, within_dBA: 1.5, ...conditions }],
};
