import { createStore, delMany, get, keys, set, type UseStore } from 'idb-keyval';

/** What lies beside one list of a design: the picture apart from what is laid upon it, for that changes with every key. */
export interface KeptPicture {
  readonly list: string;
  readonly picture: unknown;
  readonly tracing: unknown;
}

/**
 * Pictures beside the kept designs, by design and list of points; they go into no file and no link. Any call may fail:
 * private window, disk full.
 */
export interface PictureCupboard {
  readonly read: (design: string, list: string) => Promise<Omit<KeptPicture, 'list'>>;
  readonly writePicture: (design: string, list: string, picture: unknown) => Promise<void>;
  readonly writeTracing: (design: string, list: string, tracing: unknown) => Promise<void>;
  /** All of one design, for a variant of it or for putting it back. */
  readonly of: (design: string) => Promise<readonly KeptPicture[]>;
  readonly put: (design: string, kept: readonly KeptPicture[]) => Promise<void>;
  readonly remove: (design: string) => Promise<void>;
}

/** Those of this browser, in a store of their own: whoever lists the designs does not load their pictures. */
export function browserPictures(): PictureCupboard {
  let opened: UseStore | null = null;
  const shelf = () => {
    opened ??= createStore('throughfin-pictures', 'pictures');
    return opened;
  };
  const key = (design: string, list: string, what: 'picture' | 'tracing') => [design, list, what];
  const keysOf = async (design: string) => {
    const all = await keys<[string, string, string]>(shelf());
    return all.filter(([of]) => of === design);
  };
  const read: PictureCupboard['read'] = async (design, list) => ({
    picture: await get(key(design, list, 'picture'), shelf()),
    tracing: await get(key(design, list, 'tracing'), shelf()),
  });
  return {
    read,
    writePicture: (design, list, picture) => set(key(design, list, 'picture'), picture, shelf()),
    writeTracing: (design, list, tracing) => set(key(design, list, 'tracing'), tracing, shelf()),
    of: async (design) => {
      const lists = new Set((await keysOf(design)).map(([, list]) => list));
      return Promise.all([...lists].map(async (list) => ({ list, ...(await read(design, list)) })));
    },
    put: async (design, kept) => {
      for (const { list, picture, tracing } of kept) {
        await set(key(design, list, 'picture'), picture, shelf());
        await set(key(design, list, 'tracing'), tracing, shelf());
      }
    },
    remove: async (design) => delMany(await keysOf(design), shelf()),
  };
}
