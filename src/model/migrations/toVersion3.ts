import type { Migration } from './migration.ts';

/** Version 2 knew no variants of a box, and did not say how the sheet is cut. Frozen here: defaults may change, an old file may not. */
const cutting = {
  boxes: 1,
  joint: 'butt',
  tab_m: 0.012,
  fit_m: 1e-4,
  cutter_m: 0.003,
  edge_m: 0.001,
  fanHole_m: 0.0045,
  fanPitch_m: 0,
  wireHole_m: 0,
  stockLength_m: 0.6,
  stockWidth_m: 0.4,
};

export const toVersion3: Migration = {
  from: 2,
  to: 3,
  apply: (raw) => ({
    raw: { variant: '', cutting, ...raw },
    notes: ['This file does not say how to cut the sheet: common values stand there.'],
  }),
};
