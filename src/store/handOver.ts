import type { Design } from '../model/design.ts';
import { readDesign } from '../model/readDesign.ts';
import type { DesignStore } from './designStore.ts';
import type { DesignState } from './state.ts';

/** What one tab leaves for itself when it reloads; two tabs may have two designs. */
type Place = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const key = 'throughfin-over-reload';

type HandedOver = Pick<DesignState, 'design' | 'solvedDesign' | 'system' | 'units' | 'selectedPart'> & {
  /** As typed, right or wrong. */
  readonly texts: Readonly<Record<string, string>>;
};

/** Leaves all that stands in the fields for the page that comes after this one. Throws where the browser refuses. */
export function handOver(store: DesignStore, place: Place = sessionStorage): void {
  const { design, solvedDesign, system, units, selectedPart, drafts } = store.getState();
  const texts = Object.fromEntries(Object.entries(drafts).map(([path, { text }]) => [path, text]));
  const left: HandedOver = { design, solvedDesign, system, units, selectedPart, texts };
  place.setItem(key, JSON.stringify(left));
}

/** Takes up what the page before this one left, once. @returns whether there was anything that still reads */
export function takeUp(store: DesignStore, place: () => Place = () => sessionStorage): boolean {
  try {
    const text = place().getItem(key);
    if (text === null) return false;
    place().removeItem(key);
    const left = JSON.parse(text) as HandedOver;
    // The last that went together first: it has the answer that stays while something is wrong.
    const opened = [left.solvedDesign, left.design].map((each) => designOf(each));
    for (const design of opened) store.getState().restore(design, left.system, left.units);
    for (const [path, typed] of Object.entries(left.texts)) store.getState().setText(path, typed);
    store.getState().selectPart(left.selectedPart);
    return true;
  } catch {
    // No such store here, or a version that had other fields.
    return false;
  }
}

function designOf(kept: unknown): Design {
  const read = readDesign(kept);
  if (!read.ok) throw new Error('this version cannot read the design');
  return read.design;
}
