import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { ensureBuilt } from '../../src/cli/prepare.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served while the browser tests run; ends in `/`. */
    address: string;
  }
}

/** Serves the built app, building it if it is stale. */
export default async function serveDist(project: TestProject) {
  if (!ensureBuilt()) throw new Error('the app could not be built');
  const server = await preview({ logLevel: 'error', preview: { host: '127.0.0.1', port: 4690 } });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error('the built app is not served');
  project.provide('address', address);
  return () => server.close();
}
