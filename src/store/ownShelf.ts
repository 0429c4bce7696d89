import { createStore, type StoreApi } from 'zustand/vanilla';
import { parseShelfText } from '../io/shelfFile.ts';
import type { ReadProblem } from '../model/readDesign.ts';
import type { OwnEntry } from '../model/shelf/entry.ts';
import { mostEntries, readOwnEntry, shelfFormat } from '../model/shelf/ownEntries.ts';
import { browserShelfKeep, type ShelfKeep } from './shelfKeep.ts';

export type ImportResult =
  | { readonly ok: true; readonly added: number; readonly there: number }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

export interface OwnShelfState {
  readonly entries: readonly OwnEntry[];
  /** `refused`: the browser keeps nothing here; the entries last as long as the page. */
  readonly keeping: 'unknown' | 'kept' | 'refused';
  /** Entries kept here that this version cannot read. They are left alone. */
  readonly unread: number;
  /** What was taken off the shelf last, to be put back. */
  readonly removed: OwnEntry | null;
}

export interface OwnShelfActions {
  /** Reads what is kept, once; further calls wait for the first. */
  readonly open: () => Promise<void>;
  /** Adds an entry, or puts a changed one in the place of that with its id. */
  readonly put: (entry: OwnEntry) => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
  readonly putBack: () => Promise<void>;
  /** Takes all entries of a file in, but for those that are there already; or none, and says why. */
  readonly importText: (text: string) => Promise<ImportResult>;
}

export type OwnShelf = StoreApi<OwnShelfState & OwnShelfActions>;

/** Entries as kept, readable or not. */
type Raw = readonly unknown[];
type Edit = (raw: Raw) => Raw;

/**
 * The reader's own entries beside those that come with the program. Every edit is made to what is kept at that moment,
 * by this window or another; edits that the browser refuses wait here and go along with the next one.
 */
export function createOwnShelf(keep: ShelfKeep = browserShelfKeep()): OwnShelf {
  return createStore<OwnShelfState & OwnShelfActions>()((set, get) => {
    let waiting: readonly Edit[] = [];
    let opened: Promise<void> | null = null;
    let turn: Promise<void> = Promise.resolve();

    const show = (raw: Raw): Pick<OwnShelfState, 'entries' | 'unread'> => {
      const reads = raw.map((each) => readOwnEntry(each, ''));
      const entries = reads.flatMap((read) => (read.ok ? [read.entry] : []));
      return { entries, unread: reads.length - entries.length };
    };
    const read = async () => {
      try {
        const raw = rawOf(await keep.read());
        set({ ...show(waiting.reduce((so, edit) => edit(so), raw)), keeping: 'kept' });
      } catch {
        set({ keeping: 'refused' });
      }
    };
    const write = async (edit: Edit) => {
      waiting = [...waiting, edit];
      let raw: Raw = [];
      try {
        await keep.change((kept) => {
          raw = waiting.reduce((so, each) => each(so), rawOf(kept));
          return { format: shelfFormat, version: 1, entries: raw };
        });
        waiting = [];
        set({ ...show(raw), keeping: 'kept' });
      } catch {
        set({ entries: show(edit(get().entries)).entries, keeping: 'refused' });
      }
    };
    /** One after the other, in the order asked for. */
    const queue = (job: () => Promise<void>): Promise<void> => {
      turn = turn.then(job);
      return turn;
    };

    return {
      entries: [],
      keeping: 'unknown',
      unread: 0,
      removed: null,
      open: () => {
        if (opened === null) {
          keep.listen(() => void queue(read));
          opened = queue(read);
        }
        return opened;
      },
      put: (entry) => queue(() => write((raw) => withEntry(raw, entry))),
      remove: async (id) => {
        const removed = get().entries.find((entry) => entry.id === id) ?? null;
        await queue(() => write((raw) => raw.filter((each) => idOf(each) !== id)));
        set({ removed });
      },
      putBack: () => {
        const { removed } = get();
        set({ removed: null });
        return removed === null ? Promise.resolve() : get().put(removed);
      },
      importText: async (text) => {
        const file = parseShelfText(text);
        if (!file.ok) return file;
        const { entries } = get();
        const news = file.entries.filter((entry) => !entries.some((each) => isSameEntry(each, entry)));
        if (entries.length + news.length > mostEntries) {
          const reason = `With these the shelf would have ${entries.length + news.length} entries of yours; at most ${mostEntries} fit.`;
          return { ok: false, problems: [{ path: 'entries', reason }] };
        }
        const taken = new Set(entries.map(({ id }) => id));
        // One that was changed on either side since is another one: both stay.
        const added = news.map((entry) => (taken.has(entry.id) ? { ...entry, id: newEntryId() } : entry));
        await queue(() => write((raw) => added.reduce(withEntry, raw)));
        return { ok: true, added: added.length, there: file.entries.length - added.length };
      },
    };
  });
}

/** A name that no other entry has, here or elsewhere. */
export function newEntryId(): string {
  const [a = 0, b = 0] = crypto.getRandomValues(new Uint32Array(2));
  return `${Date.now().toString(36)}-${a.toString(36)}${b.toString(36)}`;
}

/** What another version keeps here is not ours to read or to overwrite: it throws, and counts as refused. */
function rawOf(kept: unknown): Raw {
  if (kept === undefined) return [];
  const { format, version, entries } = kept as Readonly<Record<string, unknown>>;
  if (format !== shelfFormat || version !== 1 || !Array.isArray(entries)) throw new Error('not this version');
  return entries;
}

function withEntry(raw: Raw, entry: OwnEntry): Raw {
  const has = raw.some((each) => idOf(each) === entry.id);
  return has ? raw.map((each) => (idOf(each) === entry.id ? entry : each)) : [...raw, entry];
}

function idOf(raw: unknown): unknown {
  return typeof raw === 'object' && raw !== null && 'id' in raw ? raw.id : undefined;
}

function isSameEntry(a: OwnEntry, b: OwnEntry): boolean {
  const text = ({ kind, name, values, source, remark }: OwnEntry) =>
    JSON.stringify([kind, name, Object.entries(values).sort(), source, remark]);
  return text(a) === text(b);
}
