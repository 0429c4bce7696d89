import type { OwnEntry } from '../../src/model/shelf/entry.ts';

/** An invented entry of somebody's own. */
export function ownEntry(change: Partial<OwnEntry> = {}): OwnEntry {
  return {
    id: 'one',
    kind: 'alloy',
    name: 'Bar from the bin',
    values: { k_WPerMK: 180, heat_JPerM3K: 2.4e6 },
    source: 'measured, invented',
    remark: '',
    ...change,
  };
}
