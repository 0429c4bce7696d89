import { type RefObject, useEffect, useState } from 'react';

/** So far from the screen a chart already keeps up. */
const margin = '400px';

/**
 * The value, but the one of before while the element is far off the screen: drawing a dozen charts that nobody looks at
 * would hold up the next key. A browser that cannot tell sees everything.
 */
export function useWhileSeen<T>(value: T, place: RefObject<Element | null>): T {
  const [isSeen, setSeen] = useState(true);
  const [shown, setShown] = useState(value);
  if (isSeen && shown !== value) setShown(value);
  useEffect(() => {
    if (!place.current || typeof IntersectionObserver === 'undefined') return;
    const observer = new IntersectionObserver(
      (entries) => setSeen(entries.some(({ isIntersecting }) => isIntersecting)),
      { rootMargin: margin },
    );
    observer.observe(place.current);
    return () => observer.disconnect();
  }, [place]);
  return isSeen ? value : shown;
}
