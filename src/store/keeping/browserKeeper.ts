import type { DesignStore } from '../designStore.ts';
import { browserCupboard } from './cupboard.ts';
import { attempt, hintThatKept } from './hint.ts';
import { createKeeper, type Heard, type Keeper, type Left, type Surroundings } from './keeper.ts';
import { browserPictures } from './pictures.ts';
import { readKept } from './record.ts';

const tabKey = 'throughfin-open';
const leftKey = 'throughfin-left-';

/** Keeps the designs of this store in this browser. */
export function browserKeeper(store: DesignStore): Keeper {
  return createKeeper(store, browserSurroundings());
}

/** What the keeper finds in a browser; where one part is refused, the others go on. */
function browserSurroundings(): Surroundings {
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('throughfin');
  return {
    cupboard: browserCupboard(),
    pictures: browserPictures(),
    tab: {
      read: () => attempt(() => sessionStorage.getItem(tabKey)) ?? null,
      write: (id) => {
        attempt(() => {
          if (id === null) sessionStorage.removeItem(tabKey);
          else {
            sessionStorage.setItem(tabKey, id);
            hintThatKept();
          }
        });
      },
    },
    tabs: {
      tell: (heard) => channel?.postMessage(heard),
      listen: (hear) => {
        const listener = ({ data }: MessageEvent<Heard>) => hear(data);
        channel?.addEventListener('message', listener);
        return () => {
          channel?.removeEventListener('message', listener);
          channel?.close();
        };
      },
    },
    breath: {
      write: (left) => attempt(() => localStorage.setItem(leftKey + left.by, JSON.stringify(left))),
      drop: (by) => attempt(() => localStorage.removeItem(leftKey + by)),
      read: () => attempt(readLeft) ?? [],
    },
    // Not randomUUID, which a page on the workshop's own network may not call.
    newId: () => crypto.getRandomValues(new Uint32Array(4)).reduce((id, word) => id + word.toString(36), ''),
    now: () => new Date(),
    delay_ms: 400,
  };
}

function readLeft(): Left[] {
  return Object.keys(localStorage)
    .filter((key) => key.startsWith(leftKey))
    .flatMap((key) => {
      const left = attempt(() => JSON.parse(localStorage.getItem(key) ?? ''));
      const record = readKept(left?.record);
      if (record !== null)
        return [
          { by: key.slice(leftKey.length), record, seen: typeof left.seen === 'string' ? left.seen : null },
        ];
      localStorage.removeItem(key);
      return [];
    });
}
