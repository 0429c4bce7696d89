import type { Design } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { createDesignStore } from '../../src/store/designStore.ts';
import type { Cupboard } from '../../src/store/keeping/cupboard.ts';
import { createKeeper, type Heard, type Left, type Surroundings } from '../../src/store/keeping/keeper.ts';
import type { KeptPicture, PictureCupboard } from '../../src/store/keeping/pictures.ts';
import { type KeptDesign, readLastDesign, unreadIn } from '../../src/store/keeping/record.ts';

/** One browser in memory: a cupboard that any number of its tabs share. */
export function fakeBrowser() {
  const kept = new Map<string, KeptDesign>();
  const strange: unknown[] = [];
  const listeners = new Map<number, (heard: Heard) => void>();
  const left = new Map<string, Left>();
  let last: unknown;
  let ids = 0;
  let trouble: Error | null = null;
  const check = () => {
    if (trouble !== null) throw trouble;
  };
  const cupboard: Cupboard = {
    list: async () => {
      check();
      return [...kept.values()];
    },
    unread: async () => {
      check();
      return strange.flatMap((found) => unreadIn(found) ?? []);
    },
    read: async (id) => {
      check();
      return kept.get(id) ?? null;
    },
    write: async (record, seen) => {
      check();
      const there = kept.get(record.id) ?? null;
      if ((there?.stamp ?? null) !== seen) return { ok: false, there };
      kept.set(record.id, structuredClone(record));
      return { ok: true };
    },
    remove: async (id) => {
      kept.delete(id);
    },
    takeLast: async () => {
      const content = readLastDesign(last);
      last = undefined;
      return content;
    },
  };
  const pictures = fakePictures(check);
  const surroundings = (remembered: string | null = null): Surroundings => {
    const me = ids++;
    let open = remembered;
    return {
      cupboard,
      pictures,
      tab: {
        read: () => open,
        write: (id) => {
          open = id;
        },
      },
      tabs: {
        tell: (heard) => {
          for (const [other, hear] of listeners) if (other !== me) hear(heard);
        },
        listen: (hear) => {
          listeners.set(me, hear);
          return () => {
            listeners.delete(me);
          };
        },
      },
      breath: {
        write: (one) => {
          left.set(one.by, structuredClone(one));
        },
        drop: (by) => {
          left.delete(by);
        },
        read: () => [...left.values()],
      },
      newId: () => `id${ids++}`,
      now: () => new Date(Date.UTC(2026, 0, 1, 12, 0, ids)),
      delay_ms: 400,
    };
  };
  return {
    kept,
    pictures,
    /** What some other program, or a hand, has left in the cupboard. */
    strange,
    left,
    /** Another tab, with the design it had open before a reload. */
    openTab: (remembered: string | null = null, design: Design = exampleById('eightResistors')) => {
      const around = surroundings(remembered);
      const store = createDesignStore(design);
      const keeper = createKeeper(store, around);
      return { store, keeper, act: store.getState(), remembers: around.tab.read };
    },
    /** From now on every touch of the cupboard fails. */
    setTrouble: (error: Error | null) => {
      trouble = error;
    },
    /** What a Throughfin that kept one design only has left. */
    setLast: (value: unknown) => {
      last = value;
    },
  };
}

/** @param check throws where the browser is to refuse */
export function fakePictures(check: () => void = () => {}): PictureCupboard {
  const kept = new Map<string, Map<string, KeptPicture>>();
  const write = async (design: string, list: string, change: Partial<KeptPicture>) => {
    check();
    const lists = kept.get(design) ?? new Map<string, KeptPicture>();
    const before = lists.get(list) ?? { list, picture: undefined, tracing: undefined };
    kept.set(design, lists.set(list, { ...before, ...change }));
  };
  return {
    read: async (design, list) => {
      check();
      return kept.get(design)?.get(list) ?? { picture: undefined, tracing: undefined };
    },
    writePicture: (design, list, picture) => write(design, list, { picture }),
    writeTracing: (design, list, tracing) => write(design, list, { tracing }),
    of: async (design) => [...(kept.get(design)?.values() ?? [])],
    put: async (design, all) => {
      for (const each of all) await write(design, each.list, each);
    },
    remove: async (design) => {
      kept.delete(design);
    },
  };
}
