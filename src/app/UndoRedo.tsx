import { useState } from 'react';
import type { Edit } from '../store/history.ts';
import { useActions, useDesign } from '../ui/bench/DesignContext.ts';
import { partOf } from '../ui/fields/groups.ts';
import { Button } from '../ui/kit/Button.tsx';
import { Glyph } from '../ui/kit/Glyph.tsx';
import { useShortcuts } from './useShortcuts.ts';

/** Takes edits back, one at a time however many keys each took, and shows the part that changes. */
export function UndoRedo({ onSave }: { readonly onSave: () => void }) {
  const last = useDesign(({ history }) => history.past.at(-1)?.name ?? null);
  const next = useDesign(({ history }) => history.future.at(-1)?.name ?? null);
  const { undo, redo, selectPart } = useActions();
  const [said, setSaid] = useState('');
  const move = (step: () => Edit | null, words: string) => () => {
    const edit = step();
    if (edit === null) return;
    const part = edit.path === null ? null : partOf(edit.path);
    if (part !== null) selectPart(part);
    setSaid(`${words}: ${edit.name}`);
  };
  const moves = { undo: move(undo, 'Taken back'), redo: move(redo, 'Done again') };
  useShortcuts({ ...moves, save: onSave });
  return (
    <>
      <Button
        onClick={moves.undo}
        disabled={last === null}
        aria-label={last === null ? 'Undo' : `Undo: ${last}`}
        title={last === null ? 'Nothing to undo' : `Undo: ${last}`}
      >
        <Glyph name="undo" />
      </Button>
      <Button
        onClick={moves.redo}
        disabled={next === null}
        aria-label={next === null ? 'Redo' : `Redo: ${next}`}
        title={next === null ? 'Nothing to redo' : `Redo: ${next}`}
      >
        <Glyph name="redo" />
      </Button>
      <span role="status" className="unseen">
        {said}
      </span>
    </>
  );
}
