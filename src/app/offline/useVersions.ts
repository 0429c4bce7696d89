import { useEffect, useRef, useState } from 'react';
import { type Versions, type Watch, watchVersions } from './watchVersions.ts';

const nothing: Versions = { stored: false, newer: false };

/** What is stored of this app in this browser, from a moment after the page has loaded. */
export function useVersions(version: string) {
  const [versions, setVersions] = useState(nothing);
  const watch = useRef<Watch | null>(null);
  useEffect(() => {
    let isOver = false;
    const start = async () => {
      const started = await watchVersions(version, setVersions);
      if (isOver) started?.stop();
      else watch.current = started;
    };
    // The first visit loads everything once more into the store: after what the page itself needs.
    if (version !== '' && document.readyState === 'complete') void start();
    else if (version !== '') window.addEventListener('load', start, { once: true });
    return () => {
      isOver = true;
      window.removeEventListener('load', start);
      watch.current?.stop();
    };
  }, [version]);
  return { ...versions, openNewest: async () => watch.current?.openNewest() };
}
