import type { Migration } from './migration.ts';
import { type Raw, withAdded } from './withAdded.ts';

/**
 * What version 1 could not say: several fans, their sound and age, dust, tilt, heat capacities, pulses, the box wall.
 * Every value leaves a box of version 1 as it was. Frozen here: defaults may change, an old file may not.
 */
const groups: Readonly<Record<string, Raw>> = {
  room: { pressureFrom: 'altitude', pressure_Pa: 101_325, listening_m: 1 },
  load: { period_s: 10 },
  sink: { heat_JPerM3K: 2.42e6 },
  fan: {
    sideBySide: 1,
    inARow: 1,
    supplySag: 0,
    speedLoss: 0,
    inletSpace_m: 0.1,
    rotation_PerS: 50,
    blades: 7,
    standingLoss: 8,
    sound_dBA: 32,
    soundAt_m: 1,
  },
  inlet: { guardBlocked: 0, filterBlocked: 0 },
  box: { tilt_rad: 0, sheet_WPerMK: 0.18, sheetEmissivity: 0.9, sheetHeat_JPerM3K: 1.47e6 },
  limits: { wall_K: 350.15, soundJudged: false, sound_dBA: 45, settled: 1e-5 },
};
const part: Raw = { tcr2_perK2: 0, ceramicHeat_JPerM3K: 3.43e6 };

export const toVersion2: Migration = {
  from: 1,
  to: 2,
  apply: (raw) => ({
    raw: {
      moreFans: [],
      ...raw,
      ...Object.fromEntries(Object.entries(groups).map(([key, added]) => [key, withAdded(raw[key], added)])),
      parts: Array.isArray(raw.parts) ? raw.parts.map((each) => withAdded(each, part)) : raw.parts,
    },
    notes: ['This file is of version 1: what it could not say stands at a neutral or common value.'],
  }),
};
