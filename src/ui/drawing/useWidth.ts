import { type RefObject, useLayoutEffect, useState } from 'react';

/** Width of an element in pixels, known before the first paint and followed from then on. */
export function useWidth(element: RefObject<HTMLElement | null>, first: number): number {
  const [width, setWidth] = useState(first);
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return;
    const measure = () => {
      if (current.clientWidth > 0) setWidth(current.clientWidth);
    };
    measure();
    if (typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    return () => observer.disconnect();
  }, [element]);
  return width;
}
