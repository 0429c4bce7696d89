import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import type { FigureId } from '../../report/working/types.ts';

const WorkingDialog = lazy(async () => ({ default: (await import('./WorkingDialog.tsx')).WorkingDialog }));

/** Hears every press on a number with a working, shows the working, and gives the focus back to the number. */
export function WorkingHost() {
  const [shown, setShown] = useState<FigureId | null>(null);
  const pressed = useRef<HTMLElement | null>(null);
  useEffect(() => {
    const press = ({ target }: MouseEvent) => {
      const number = target instanceof Element ? target.closest<HTMLElement>('[data-figure]') : null;
      if (number === null) return;
      pressed.current = number;
      setShown(number.dataset.figure ?? null);
    };
    document.addEventListener('click', press);
    return () => document.removeEventListener('click', press);
  }, []);
  if (shown === null) return null;
  const close = () => {
    setShown(null);
    placeOf(pressed.current)?.focus();
  };
  return (
    <Suspense fallback={null}>
      <WorkingDialog id={shown} onChoose={setShown} onClose={close} />
    </Suspense>
  );
}

/** The number that was pressed; where an edit has drawn its table anew meanwhile, the one that now stands for it. */
function placeOf(number: HTMLElement | null): HTMLElement | null {
  if (number === null || number.isConnected) return number;
  return document.querySelector<HTMLElement>(`[data-figure="${number.dataset.figure}"]`);
}
