import { defaultDesign } from '../../model/defaults.ts';
import type { Design } from '../../model/design.ts';
import { examples } from '../../model/examples/examples.ts';
import type { DesignStore } from '../designStore.ts';
import type { DesignState, Identity, Keeping } from '../state.ts';
import type { Cupboard } from './cupboard.ts';
import type { KeptPicture, PictureCupboard } from './pictures.ts';
import { contentOf, type KeptDesign, type Unread } from './record.ts';

/** What the keeper takes from the browser; replaced in tests. */
export interface Surroundings {
  readonly cupboard: Cupboard;
  readonly pictures: PictureCupboard;
  /** Which design this tab had open: outlives a reload, not the tab. */
  readonly tab: { readonly read: () => string | null; readonly write: (id: string | null) => void };
  /** Tells other tabs of a writing, and hears of theirs. */
  readonly tabs: {
    readonly tell: (heard: Heard) => void;
    readonly listen: (hear: (heard: Heard) => void) => () => void;
  };
  /** Takes a design at once, while the page is already going, when nothing that takes time gets done any more. */
  readonly breath: {
    readonly write: (left: Left) => void;
    readonly drop: (by: string) => void;
    readonly read: () => readonly Left[];
  };
  readonly newId: () => string;
  readonly now: () => Date;
  /** How long a design has to stand still before it is written. */
  readonly delay_ms: number;
}

export interface Heard {
  readonly id: string;
  readonly stamp: string | null;
}

/** A design that was not yet in the cupboard as its page went, and the stamp it would have been written over. */
export interface Left {
  /** The page that left it; two may leave the same design. */
  readonly by: string;
  readonly record: KeptDesign;
  readonly seen: string | null;
}

export interface Keeper {
  /** Brings back the design of this tab, or the one written last. @returns whether it did */
  readonly restore: () => Promise<boolean>;
  /** Writes what has changed, now. @returns whether everything is kept */
  readonly flush: () => Promise<boolean>;
  /** Keeps the design even where nobody has touched it yet, for something is to lie beside it. @returns its id */
  readonly claim: () => Promise<string | null>;
  /** Pictures beside the designs: they follow a variant, and go with a design that is removed. */
  readonly pictures: PictureCupboard;
  /** The page may be gone in a moment: what is not yet written is left where it can be picked up. */
  readonly leave: () => void;
  /** All kept designs, the one written last first. May reject. */
  readonly list: () => Promise<readonly KeptDesign[]>;
  /** Designs in the cupboard that cannot be read. May reject. */
  readonly unread: () => Promise<readonly Unread[]>;
  /** Hears whenever the list may be another: after a writing, here or in another tab. @returns what ends it */
  readonly watch: (hear: () => void) => () => void;
  /** Puts a kept design on the bench. @returns false where it is not there any more */
  readonly open: (id: string) => Promise<boolean>;
  /** What is on the bench stays in the cupboard as it is, and goes on as another design of the same family. */
  readonly makeVariant: (name: string) => Promise<void>;
  readonly remove: (record: KeptDesign) => Promise<void>;
  /** Puts a removed one back. */
  readonly putBack: (record: KeptDesign) => Promise<void>;
  /** After another tab changed the same design: theirs comes to the bench, or ours goes on as a variant. */
  readonly settle: (way: 'takeTheirs' | 'keepBoth') => Promise<void>;
  readonly stop: () => void;
}

/** These can be had again at any time; only what somebody made is kept. */
const untouched = new Set<Design>([defaultDesign, ...examples.map(({ design }) => design)]);

/**
 * Keeps the design on the bench between visits, a moment after it stops changing. A writing goes ahead only over what
 * this tab has seen itself, so two tabs never overwrite each other; a refusal is told to the store and changes nothing.
 */
export function createKeeper(store: DesignStore, around: Surroundings): Keeper {
  const { cupboard, tab, tabs } = around;
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** The stamp of what this tab last wrote or read of its design; `null` before the first. */
  let seen: string | null = null;
  let written: DesignState = store.getState();
  const me = around.newId();
  let busy: Promise<boolean> = Promise.resolve(true);
  const hearers = new Set<() => void>();
  /** Pictures of the designs removed by this page, until one is put back. */
  const removedPictures = new Map<string, readonly KeptPicture[]>();
  const tellHearers = () => {
    for (const hear of hearers) hear();
  };

  const setKeeping = (keeping: Keeping) => {
    if (store.getState().keeping !== keeping) store.getState().setKeeping(keeping);
  };
  const isWritten = (state: DesignState) =>
    sameContent(state, written) && state.identity === written.identity;
  const isNothing = (state: DesignState) =>
    state.identity === null && untouched.has(state.design) && Object.keys(state.drafts).length === 0;

  const identify = (): Identity => {
    const { identity, setIdentity } = store.getState();
    if (identity !== null) return identity;
    const id = around.newId();
    seen = null;
    const fresh = { id, family: id };
    setIdentity(fresh);
    tab.write(id);
    return fresh;
  };
  const recordOf = (state: DesignState, { id, family }: Identity): KeptDesign => ({
    id,
    family,
    savedAt: around.now().toISOString(),
    stamp: around.newId(),
    content: contentOf(state),
  });
  /** @param evenUntouched to keep what can be had again at any time, too */
  const write = async (evenUntouched = false): Promise<boolean> => {
    const state = store.getState();
    const isNew = evenUntouched && state.identity === null;
    if (!isNew && (isNothing(state) || isWritten(state))) return state.keeping !== 'parted';
    if (state.keeping === 'parted') return false;
    const identity = identify();
    const record = recordOf(state, identity);
    try {
      const result = await cupboard.write(record, seen);
      if (!result.ok) {
        setKeeping('parted');
        return false;
      }
      seen = record.stamp;
      written = { ...state, identity };
      around.breath.drop(me);
      tabs.tell({ id: record.id, stamp: record.stamp });
      setKeeping('kept');
      tellHearers();
      return true;
    } catch (error) {
      setKeeping(isFull(error) ? 'full' : 'refused');
      return false;
    }
  };
  /** One writing at a time, or the second would take the first for another tab's. */
  const flush = (evenUntouched = false) => {
    clearTimeout(timer);
    timer = undefined;
    const next = () => write(evenUntouched);
    busy = busy.then(next, next);
    return busy;
  };
  const show = ({ id, family, stamp, content }: KeptDesign) => {
    store.getState().restore({ ...content, identity: { id, family } });
    seen = stamp;
    written = store.getState();
    tab.write(id);
    setKeeping('kept');
  };

  /** A picture that cannot be had or kept is no reason to do without the design. */
  const picturesOf = (id: string) => around.pictures.of(id).catch(() => []);
  const putPictures = (id: string, kept: readonly KeptPicture[]) =>
    kept.length === 0 ? undefined : around.pictures.put(id, kept).catch(() => undefined);
  const copyPictures = async (from: string, to: string) => putPictures(to, await picturesOf(from));

  /** Brings in what pages left as they went; what another tab has overtaken meanwhile becomes a variant. */
  const pickUp = async () => {
    for (const { by, record, seen: over } of around.breath.read()) {
      const result = await cupboard.write(record, over);
      if (!result.ok && JSON.stringify(result.there?.content) !== JSON.stringify(record.content)) {
        const id = around.newId();
        await cupboard.write({ ...record, id }, null);
        await copyPictures(record.id, id);
      }
      around.breath.drop(by);
    }
  };
  const follow = async ({ id, stamp }: Heard) => {
    const before = store.getState();
    if (before.identity?.id !== id || stamp === seen || !isWritten(before)) return;
    try {
      const there = await cupboard.read(id);
      if (there === null || there.stamp === seen || !isWritten(store.getState())) return;
      show(there);
      store.getState().tell('This design was changed in another tab; what you see is the newer one.');
    } catch {
      setKeeping('refused');
    }
  };
  const stopListening = tabs.listen((heard) => {
    tellHearers();
    void follow(heard);
  });
  const stopWatching = store.subscribe((state, before) => {
    if (state.identity === null && before.identity !== null) {
      seen = null;
      tab.write(null);
      if (state.keeping === 'parted') setKeeping('unknown');
    }
    if (sameContent(state, before) || isWritten(state)) return;
    clearTimeout(timer);
    timer = setTimeout(() => void flush(), around.delay_ms);
  });

  return {
    restore: async () => {
      const before = store.getState();
      try {
        await pickUp();
        const id = tab.read();
        const kept =
          (id === null ? null : await cupboard.read(id)) ?? newest(await cupboard.list()) ?? (await last());
        const now = store.getState();
        if (kept === null || !sameContent(now, before)) return false;
        show(kept);
        return true;
      } catch {
        setKeeping('refused');
        return false;
      }
    },
    flush: () => flush(),
    claim: async () => {
      await flush(true);
      return store.getState().identity?.id ?? null;
    },
    pictures: around.pictures,
    leave: () => {
      const state = store.getState();
      if (isNothing(state) || isWritten(state)) return;
      const identity = identify();
      around.breath.write({ by: me, record: recordOf(state, identity), seen });
      void flush();
    },
    list: async () => [...(await cupboard.list())].sort((a, b) => b.savedAt.localeCompare(a.savedAt)),
    unread: () => cupboard.unread(),
    watch: (hear) => {
      hearers.add(hear);
      return () => hearers.delete(hear);
    },
    open: async (id) => {
      await flush();
      const kept = await cupboard.read(id);
      if (kept === null) return false;
      show(kept);
      return true;
    },
    makeVariant: async (name) => {
      await flush(true);
      const { id: from, family } = identify();
      const id = around.newId();
      seen = null;
      store.getState().setIdentity({ id, family });
      tab.write(id);
      store.getState().setText('variant', name);
      await flush();
      await copyPictures(from, id);
    },
    remove: async ({ id }) => {
      removedPictures.set(id, await picturesOf(id));
      await cupboard.remove(id);
      await around.pictures.remove(id).catch(() => undefined);
      const { identity, setIdentity } = store.getState();
      if (identity?.id === id) {
        setIdentity(null);
        written = store.getState();
      }
      tabs.tell({ id, stamp: null });
      tellHearers();
    },
    putBack: async (record) => {
      await cupboard.write(record, null);
      await putPictures(record.id, removedPictures.get(record.id) ?? []);
      removedPictures.delete(record.id);
      tellHearers();
    },
    settle: async (way) => {
      const { identity } = store.getState();
      if (identity === null) return;
      const there = await cupboard.read(identity.id);
      if (way === 'takeTheirs' && there !== null) {
        show(there);
        return;
      }
      // Where the other tab has removed it there is nothing to keep beside ours.
      const id = there === null ? identity.id : around.newId();
      if (there !== null) {
        store.getState().setIdentity({ id, family: identity.family });
        tab.write(id);
      }
      seen = null;
      setKeeping('unknown');
      await flush();
      if (id !== identity.id) await copyPictures(identity.id, id);
    },
    stop: () => {
      clearTimeout(timer);
      stopListening();
      stopWatching();
    },
  };

  async function last(): Promise<KeptDesign | null> {
    const content = await cupboard.takeLast();
    if (content === null) return null;
    const id = around.newId();
    const record = { id, family: id, savedAt: around.now().toISOString(), stamp: around.newId(), content };
    await cupboard.write(record, null);
    return record;
  }
}

function sameContent(a: DesignState, b: DesignState): boolean {
  return a.design === b.design && a.drafts === b.drafts && a.units === b.units && a.system === b.system;
}

function newest(records: readonly KeptDesign[]): KeptDesign | null {
  return records.reduce<KeptDesign | null>(
    (best, each) => (best === null || each.savedAt > best.savedAt ? each : best),
    null,
  );
}

function isFull(error: unknown): boolean {
  return error instanceof Error && error.name === 'QuotaExceededError';
}
