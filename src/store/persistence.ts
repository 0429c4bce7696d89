import { get, set } from 'idb-keyval';
import { readDesign } from '../model/readDesign.ts';
import type { DesignStore } from './designStore.ts';

/** Where the last design is kept between visits; replaced in tests. May fail at any call (private window, disk full). */
export interface Keep {
  readonly read: (key: string) => Promise<unknown>;
  readonly write: (key: string, value: unknown) => Promise<void>;
}

const browserKeep: Keep = { read: (key) => get(key), write: (key, value) => set(key, value) };

const key = 'throughfin-last-design';

/**
 * Opens the design of the last visit, if there is one and it still reads. @returns whether it did
 * What was typed before the answer came is not overwritten.
 */
export async function restoreLastDesign(store: DesignStore, keep: Keep = browserKeep): Promise<boolean> {
  const before = store.getState();
  let kept: unknown;
  try {
    kept = await keep.read(key);
  } catch {
    store.getState().setKeeping('refused');
    return false;
  }
  if (!isKept(kept)) return false;
  const read = readDesign(kept.design);
  const now = store.getState();
  if (!read.ok || now.design !== before.design || now.drafts !== before.drafts) return false;
  now.restore(read.design, kept.system === 'inch' ? 'inch' : 'metric', wordsOnly(kept.units));
  return true;
}

/**
 * Keeps the last solved design, a moment after it stops changing. @returns stops keeping
 * A refusal is told to the store and otherwise changes nothing.
 */
export function keepLastDesign(store: DesignStore, keep: Keep = browserKeep, delay_ms = 400): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const save = async () => {
    const { solvedDesign, system, units } = store.getState();
    try {
      await keep.write(key, { design: solvedDesign, system, units });
      store.getState().setKeeping('kept');
    } catch {
      store.getState().setKeeping('refused');
    }
  };
  const stop = store.subscribe((now, before) => {
    if (
      now.solvedDesign === before.solvedDesign &&
      now.system === before.system &&
      now.units === before.units
    )
      return;
    clearTimeout(timer);
    timer = setTimeout(save, delay_ms);
  });
  return () => {
    clearTimeout(timer);
    stop();
  };
}

function isKept(kept: unknown): kept is { design: unknown; system: unknown; units: unknown } {
  return typeof kept === 'object' && kept !== null && 'design' in kept && 'system' in kept && 'units' in kept;
}

function wordsOnly(units: unknown): Record<string, string> {
  if (typeof units !== 'object' || units === null) return {};
  return Object.fromEntries(
    Object.entries(units).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
}
