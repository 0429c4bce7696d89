import type { KeyboardEvent } from 'react';
import type { FieldView } from '../../store/fieldView.ts';
import { useActions } from '../bench/DesignContext.ts';
import { nudge } from './nudge.ts';

/** What a text box needs to edit one field: its text, its unit while a bare number stands there, and the arrow keys. */
export function useTyping({ path, text, unit, problem, field }: FieldView) {
  const { setText, endEdit } = useActions();
  const isNumber = field.kind === 'quantity' || field.kind === 'count';
  return {
    value: text,
    unit: /[\d.,]\s*$/.test(text) || text === '' ? unit : '',
    invalid: problem !== null,
    inputMode: field.kind === 'count' ? ('numeric' as const) : ('text' as const),
    onText: (typed: string) => setText(path, typed),
    onBlur: endEdit,
    onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => {
      if (!isNumber || event.altKey || event.ctrlKey || event.metaKey) return;
      const direction = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : null;
      if (direction === null) return;
      event.preventDefault();
      const moved = nudge(text, direction);
      if (moved !== null) setText(path, moved);
    },
  };
}
