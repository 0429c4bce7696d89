/** What a page may ask of the service worker. */
export type Ask =
  /** Answered with the worker's version, a string, through the port sent along. */
  | { readonly ask: 'version' }
  /** The worker that waits becomes the active one. */
  | { readonly ask: 'take over' };

/**
 * Name of the cache that holds one version, and of the lock by which a page of that version says that it still needs
 * it. Several copies of the app may live on one origin, hence the folder.
 */
export function nameOf(version: string, folder: string): string {
  return `${namesIn(folder)}${version}`;
}

/** What the names of all versions in this folder start with. */
export function namesIn(folder: string): string {
  return `throughfin ${new URL(folder).pathname} `;
}
