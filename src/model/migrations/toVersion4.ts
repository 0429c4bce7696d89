import type { Migration } from './migration.ts';

/** Version 3 did not say how parts vary. No row means the usual spreads, which every new design has too: nothing to note. */
export const toVersion4: Migration = {
  from: 3,
  to: 4,
  apply: (raw) => ({ raw: { spreads: [], ...raw }, notes: [] }),
};
