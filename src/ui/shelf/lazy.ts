import { lazy } from 'react';

/** The way to the shelf, loaded with all that stands on it after the first paint. */
export const ShelfBar = lazy(async () => ({ default: (await import('./ShelfBar.tsx')).ShelfBar }));
