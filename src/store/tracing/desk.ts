import type { UnitSystem } from '../../model/say.ts';
import { emptyTracing, type Tracing } from '../../model/tracing/tracing.ts';
import type { PictureCupboard } from '../keeping/pictures.ts';
import { readKeptTracing, readPicture } from './record.ts';
import { createTracingStore, type Picture, type TracingStore } from './tracingStore.ts';

/** How the browser keeps what is laid out: not yet anything, all of it, or why not. */
export type PictureKeeping = 'nothing' | 'kept' | 'full' | 'refused';

export interface Around {
  /** Where pictures are kept; `null` where no designs are kept either. */
  readonly pictures: PictureCupboard | null;
  /** Id of the design on the bench; `null` while it is none of the kept ones. */
  readonly design: string | null;
  /** Has the design kept, whatever it is. */
  readonly claim: () => Promise<string | null>;
  readonly list: string;
  readonly system: UnitSystem;
  /** Units of the axes to begin with. */
  readonly blank?: Tracing;
  readonly hear: (keeping: PictureKeeping) => void;
  /** How long marks have to stand still before they are written. */
  readonly delay_ms?: number;
}

export interface Laid {
  readonly store: TracingStore;
  /** Writes what is not yet written, and stops listening. */
  readonly close: () => Promise<void>;
}

interface Unkept {
  readonly picture: Picture | null;
  readonly tracing: Tracing;
}

/** What the browser would not keep stays here for as long as the page lives. */
const unkept = new Map<string, Unkept>();

/** Lays out the picture of a list of points as it was left, and keeps whatever is done to it from then on. */
export async function layOut(around: Around): Promise<Laid> {
  const { list, system, blank = emptyTracing(system), delay_ms = 400 } = around;
  const found = around.design === null ? null : await find(around, around.design, blank);
  const store = createTracingStore(system, found, blank);
  const isKept = found !== null && !unkept.has(keyOf(around.design, list));
  if (found?.picture) around.hear(isKept ? 'kept' : 'refused');

  let design = around.design;
  let keptPicture = isKept ? found.picture : null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let written: Unkept = store.getState();
  const write = async () => {
    clearTimeout(timer);
    const { picture, tracing } = store.getState();
    if (picture === written.picture && tracing === written.tracing) return;
    written = { picture, tracing };
    try {
      design ??= await around.claim();
      if (design === null || around.pictures === null) throw new Error('no designs are kept');
      if (picture !== keptPicture) await around.pictures.writePicture(design, list, picture);
      keptPicture = picture;
      await around.pictures.writeTracing(design, list, tracing);
      unkept.delete(keyOf(design, list));
      around.hear('kept');
    } catch (error) {
      unkept.set(keyOf(design, list), { picture, tracing });
      around.hear(error instanceof Error && error.name === 'QuotaExceededError' ? 'full' : 'refused');
    }
  };
  let busy: Promise<void> = Promise.resolve();
  /** One writing at a time, or an older one might come last. */
  const flush = () => {
    busy = busy.then(write, write);
    return busy;
  };
  const stop = store.subscribe((state, before) => {
    if (state.picture === before.picture && state.tracing === before.tracing) return;
    clearTimeout(timer);
    // A new picture is worth writing at once.
    timer = setTimeout(() => void flush(), state.picture === before.picture ? delay_ms : 0);
  });
  return {
    store,
    close: () => {
      stop();
      return flush();
    },
  };
}

async function find({ pictures, list }: Around, design: string, blank: Tracing): Promise<Unkept | null> {
  const here = unkept.get(keyOf(design, list));
  if (here !== undefined) return here;
  try {
    const kept = await pictures?.read(design, list);
    const picture = readPicture(kept?.picture);
    return picture === null ? null : { picture, tracing: readKeptTracing(kept?.tracing) ?? blank };
  } catch {
    return null;
  }
}

function keyOf(design: string | null, list: string): string {
  return `${design ?? ''} ${list}`;
}
