import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Size } from './stageGeometry.ts';

/** Size of an element inside its edges, followed as it changes. */
export function useSize(element: RefObject<HTMLElement | null>): Size {
  const [size, setSize] = useState<Size>({ width: 320, height: 240 });
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = current;
      if (width > 0) setSize((before) => (same(before, { width, height }) ? before : { width, height }));
    };
    measure();
    if (typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(measure);
    observer.observe(current);
    return () => observer.disconnect();
  }, [element]);
  return size;
}

function same(a: Size, b: Size): boolean {
  return a.width === b.width && a.height === b.height;
}
