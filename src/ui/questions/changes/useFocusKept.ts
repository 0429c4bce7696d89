import { type RefObject, useLayoutEffect, useRef } from 'react';

/** Where the control that had the focus goes with its row, the list takes it, so that nobody is thrown to the top. */
export function useFocusKept(list: RefObject<HTMLElement | null>, rows: unknown): void {
  const wasInside = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: looks once after every change of the rows.
  useLayoutEffect(() => {
    const box = list.current;
    if (box === null) return;
    if (wasInside.current && document.activeElement === document.body) box.focus({ preventScroll: true });
    const enter = () => {
      wasInside.current = true;
    };
    // What is taken away loses the focus to nothing; a reader takes it somewhere.
    const leave = ({ relatedTarget }: FocusEvent) => {
      if (relatedTarget !== null) wasInside.current = false;
    };
    box.addEventListener('focusin', enter);
    box.addEventListener('focusout', leave);
    return () => {
      box.removeEventListener('focusin', enter);
      box.removeEventListener('focusout', leave);
    };
  }, [list, rows]);
}
