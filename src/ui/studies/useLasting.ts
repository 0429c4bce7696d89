import { useEffect, useState } from 'react';

/** What lasts no longer than this would only flicker. */
const moment_ms = 600;

/** Whether something has been so for a while. */
export function useLasting(isSo: boolean): boolean {
  const [isLasting, setLasting] = useState(false);
  useEffect(() => {
    if (!isSo) return;
    const timer = setTimeout(() => setLasting(true), moment_ms);
    return () => {
      clearTimeout(timer);
      setLasting(false);
    };
  }, [isSo]);
  return isSo && isLasting;
}
