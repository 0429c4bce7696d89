import type { Ask } from './messages.ts';
import { answer, type Build, mendBuild, removeOthers, type Surroundings, storeBuild } from './store.ts';

declare const self: ServiceWorkerGlobalScope;
/** Written in when the app is built: src/cli/offlineBuild.mjs. */
declare const BUILD: Build;

const build: Build = BUILD;
const around: Surroundings = {
  folder: self.registration.scope,
  caches: self.caches,
  fetch: (request) => self.fetch(request),
  locks: async () => ((await self.navigator.locks.query()).held ?? []).map(({ name }) => name ?? ''),
};
const pause_ms = 3000;

self.addEventListener('install', (event) => event.waitUntil(storeBuild(build, around)));

// The very first page is served from now on too, and so are its parts that load later.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(around.folder)) return;
  event.respondWith(answer(request, build, around));
  // Not by waitUntil: a worker that waits for something holds up the next version.
  if (request.mode === 'navigate') setTimeout(upkeep, pause_ms);
});

self.addEventListener('message', (event) => {
  const { ask } = event.data as Ask;
  if (ask === 'version') event.ports[0]?.postMessage(build.version);
  else event.waitUntil(self.skipWaiting());
});

let isMended = false;

/** After the page has come up. The version that is being stored right now is nobody's yet and must not be removed. */
async function upkeep(): Promise<void> {
  const { installing, waiting } = self.registration;
  if (installing === null && waiting === null) await removeOthers(build, around);
  if (isMended) return;
  isMended = true;
  await mendBuild(build, around);
}
