import { lazy, Suspense, useEffect, useRef, useState } from 'react';
import type { FigureId } from '../../report/working/types.ts';
import { stepAmong } from './stepAmong.ts';

const WorkingDialog = lazy(async () => ({ default: (await import('./WorkingDialog.tsx')).WorkingDialog }));

/** Hears every press on a number with a working, shows the working, and gives the focus back to the number. Arrows step on. */
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
    const step = (event: KeyboardEvent) => {
      const number = event.target instanceof HTMLElement && event.target.dataset.figure ? event.target : null;
      const next = number && stepAmong(number, event.key);
      if (!next) return;
      event.preventDefault();
      next.focus();
    };
    document.addEventListener('click', press);
    document.addEventListener('keydown', step);
    return () => {
      document.removeEventListener('click', press);
      document.removeEventListener('keydown', step);
    };
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
