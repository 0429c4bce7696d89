import { type Ask, nameOf } from '../../workers/offline/messages.ts';

export interface Versions {
  /** The version in use is stored in this browser: no network is needed any more. */
  readonly stored: boolean;
  /** A version other than this page's is stored whole and may be opened. */
  readonly newer: boolean;
}

export interface Watch {
  readonly stop: () => void;
  /** Lets the newest version take over and opens it. Other tabs stay as they are. */
  readonly openNewest: () => Promise<void>;
}

const hour_ms = 3_600_000;
/** A worker that says nothing for so long will not speak any more. */
const patience_ms = 4000;

/**
 * Has the browser store the app, and tells what is stored whenever that changes. Where the browser has no store, or
 * refuses it, nothing is told and nothing else changes.
 * @param version of this page
 */
export async function watchVersions(
  version: string,
  tell: (versions: Versions) => void,
): Promise<Watch | null> {
  if (!('serviceWorker' in navigator)) return null;
  const { serviceWorker } = navigator;
  const folder = new URL('./', document.baseURI).href;
  let registration: ServiceWorkerRegistration;
  try {
    registration = await serviceWorker.register(`${folder}serviceWorker.js`, { updateViaCache: 'none' });
    holdVersion(nameOf(version, folder));
    registration.addEventListener('updatefound', watchInstalling);
  } catch {
    return null;
  }

  async function look() {
    const { waiting, active } = registration;
    const newest = active && (await versionOf(waiting ?? active));
    tell({ stored: active !== null, newer: newest !== null && newest !== version });
  }
  function watchInstalling() {
    registration.installing?.addEventListener('statechange', look);
  }
  watchInstalling();
  serviceWorker.addEventListener('controllerchange', look);
  await look();
  // A page may stay open for days.
  const timer = setInterval(() => registration.update().catch(() => {}), hour_ms);
  return {
    stop: () => {
      clearInterval(timer);
      serviceWorker.removeEventListener('controllerchange', look);
      registration.removeEventListener('updatefound', watchInstalling);
    },
    openNewest: async () => {
      const { waiting } = registration;
      if (waiting !== null) {
        const change = new Promise((resolve) =>
          serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
        );
        waiting.postMessage({ ask: 'take over' } satisfies Ask);
        await Promise.race([change, pause(patience_ms)]);
      }
      location.reload();
    },
  };
}

/** As long as this page is open, what it may still have to load is not removed. */
function holdVersion(name: string): void {
  void navigator.locks.request(name, { mode: 'shared' }, () => new Promise(() => {}));
}

async function versionOf(worker: ServiceWorker): Promise<string | null> {
  const { port1, port2 } = new MessageChannel();
  const said = new Promise<string>((resolve) => {
    port1.onmessage = ({ data }) => resolve(String(data));
  });
  worker.postMessage({ ask: 'version' } satisfies Ask, [port2]);
  const answer = await Promise.race([said, pause(patience_ms)]);
  port1.close();
  return answer ?? null;
}

function pause(time_ms: number): Promise<undefined> {
  return new Promise((resolve) => setTimeout(resolve, time_ms));
}
