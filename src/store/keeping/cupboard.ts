import { createStore, del, entries, get, type UseStore, update } from 'idb-keyval';
import { type KeptDesign, readKept, readLastDesign, type Unread, unreadIn } from './record.ts';

/** What became of a writing; after a clash, what another tab has written meanwhile. */
export type Written = { readonly ok: true } | { readonly ok: false; readonly there: KeptDesign | null };

/** Where designs are kept between visits; replaced in tests. Any call may fail: private window, disk full. */
export interface Cupboard {
  readonly list: () => Promise<readonly KeptDesign[]>;
  /** What is in it and cannot be read. */
  readonly unread: () => Promise<readonly Unread[]>;
  readonly read: (id: string) => Promise<KeptDesign | null>;
  /** Writes if what is there is still what the writer has `seen`; `null`: nothing yet. In one piece with the reading. */
  readonly write: (record: KeptDesign, seen: string | null) => Promise<Written>;
  readonly remove: (id: string) => Promise<void>;
  /** The design that a Throughfin without a list of them kept; read once, then gone. */
  readonly takeLast: () => Promise<KeptDesign['content'] | null>;
}

const lastKey = 'throughfin-last-design';

/** The cupboard of this browser. Opened at the first call, so that a refusal is one of that call. */
export function browserCupboard(): Cupboard {
  let opened: UseStore | null = null;
  const shelf = () => {
    opened ??= createStore('throughfin', 'designs');
    return opened;
  };
  return {
    list: async () => {
      const found = await entries<string, unknown>(shelf());
      return found.flatMap(([, value]) => readKept(value) ?? []);
    },
    unread: async () => {
      const found = await entries<string, unknown>(shelf());
      return found.flatMap(([, value]) => unreadIn(value) ?? []);
    },
    read: async (id) => readKept(await get(id, shelf())),
    write: async (record, seen) => {
      let clash: KeptDesign | null | undefined;
      await update<unknown>(
        record.id,
        (old) => {
          const there = readKept(old);
          if ((there?.stamp ?? null) === seen) return record;
          clash = there;
          return old;
        },
        shelf(),
      );
      return clash === undefined ? { ok: true } : { ok: false, there: clash };
    },
    remove: (id) => del(id, shelf()),
    takeLast: async () => {
      const content = readLastDesign(await get(lastKey));
      if (content !== null) await del(lastKey);
      return content;
    },
  };
}
