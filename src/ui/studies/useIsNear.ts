import { useEffect, useState } from 'react';

/** So far from the screen something counts as looked at. */
const margin = '600px';

/** Whether the element with this identity is on the screen or close to it; where a browser cannot tell, it is. */
export function useIsNear(id: string | undefined): boolean {
  const canTell = id !== undefined && typeof IntersectionObserver !== 'undefined';
  const [isNear, setNear] = useState(!canTell);
  useEffect(() => {
    const element = canTell && document.getElementById(id);
    if (!element) return;
    const observer = new IntersectionObserver(
      (entries) => setNear(entries.some(({ isIntersecting }) => isIntersecting)),
      { rootMargin: margin },
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, [canTell, id]);
  return isNear;
}
