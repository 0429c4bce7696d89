import { useEffect, useRef } from 'react';

export interface Shortcuts {
  readonly undo: () => void;
  readonly redo: () => void;
  readonly save: () => void;
}

/**
 * The keys everybody knows. Undo in a text box is ours too, for the page rewrites what stands there; in a dialog the
 * browser's own holds.
 */
export function useShortcuts(shortcuts: Shortcuts): void {
  const present = useRef(shortcuts);
  present.current = shortcuts;
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if ((event.target as Element | null)?.closest?.('dialog')) return;
      const act = actionOf(event);
      if (act === null) return;
      event.preventDefault();
      present.current[act]();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
}

function actionOf({ key, shiftKey }: KeyboardEvent): keyof Shortcuts | null {
  switch (key.toLowerCase()) {
    case 'z':
      return shiftKey ? 'redo' : 'undo';
    case 'y':
      return shiftKey ? null : 'redo';
    case 's':
      return shiftKey ? null : 'save';
    default:
      return null;
  }
}
