import { useSyncExternalStore } from 'react';

interface PrintChoice {
  /** Ids of the pages ticked last: remembered until the page is left. */
  readonly ticked: readonly string[];
  /** Pages behind the summary in the next print. */
  readonly wanted: readonly string[];
}

let choice: PrintChoice = { ticked: [], wanted: [] };
const listeners = new Set<() => void>();

export function wantPages(ids: readonly string[]): void {
  choose({ ticked: ids, wanted: ids });
}

/** After printing: a print that nobody chose pages for has one page. */
export function wantOnePage(): void {
  choose({ ticked: choice.ticked, wanted: [] });
}

export function usePrintChoice(): PrintChoice {
  return useSyncExternalStore(subscribe, () => choice);
}

function choose(next: PrintChoice): void {
  choice = next;
  for (const tell of listeners) tell();
}

function subscribe(tell: () => void): () => void {
  listeners.add(tell);
  return () => listeners.delete(tell);
}
