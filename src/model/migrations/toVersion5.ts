import type { Migration } from './migration.ts';
import { withAdded } from './withAdded.ts';

const noReadings = { temperatures: [], pressures: [], flows: [], voltages: [], sounds: [] };

const notFitted = {
  readings: 0,
  bondFactor: 1,
  bondWithin: 0,
  slotFactor: 1,
  slotWithin: 0,
  fanFactor: 1,
  fanWithin: 0,
  emissivityFactor: 1,
  emissivityWithin: 0,
  leakWithin_m: 0,
};

const noSource = { curveSource: '' };

/** Version 4 knew no readings, nothing fitted to them, and no place for where a fan's curve comes from. */
export const toVersion5: Migration = {
  from: 4,
  to: 5,
  apply: ({ fan, moreFans, ...raw }) => ({
    raw: {
      readings: noReadings,
      fitted: notFitted,
      ...raw,
      fan: withAdded(fan, noSource),
      moreFans: Array.isArray(moreFans) ? moreFans.map((other) => withAdded(other, noSource)) : moreFans,
    },
    notes: [],
  }),
};
