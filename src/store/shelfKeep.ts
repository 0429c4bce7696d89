import { get, update } from 'idb-keyval';

/** Where the reader's own entries are kept, and heard of from other windows; replaced in tests. May fail at any call. */
export interface ShelfKeep {
  readonly read: () => Promise<unknown>;
  /** Reads, changes and writes in one go, so that no window overwrites what another has just written. */
  readonly change: (changed: (kept: unknown) => unknown) => Promise<void>;
  /** Calls back whenever another window has changed the shelf. */
  readonly listen: (heard: () => void) => void;
}

const key = 'throughfin-shelf';

/** The store of this browser. */
export function browserShelfKeep(): ShelfKeep {
  let channel: BroadcastChannel | null = null;
  return {
    read: async () => get(key),
    change: async (changed) => {
      await update(key, changed);
      channel?.postMessage('changed');
    },
    listen: (heard) => {
      if (typeof BroadcastChannel === 'undefined') return;
      channel = new BroadcastChannel(key);
      channel.addEventListener('message', heard);
    },
  };
}
