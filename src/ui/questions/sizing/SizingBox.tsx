import type { SizingBox as Box } from '../../../io/sizingForm.ts';
import { nudge } from '../../fields/nudge.ts';
import { FieldFrame, noteIdOf } from '../../kit/FieldFrame.tsx';
import { TextBox } from '../../kit/TextBox.tsx';

interface Props {
  readonly id: string;
  readonly label: string;
  readonly help: string;
  readonly box: Box;
  readonly onText: (text: string) => void;
}

/** A quantity, or a list of them, that belongs to the question and not to the design. */
export function SizingBox({ id, label, help, box, onText }: Props) {
  const { text, unit, problem } = box;
  return (
    <FieldFrame id={id} label={label} unit={unit} help={help} problem={problem} shape="tall">
      <TextBox
        id={id}
        aria-describedby={noteIdOf(id)}
        value={text}
        unit={unit}
        invalid={problem !== null}
        onText={onText}
        onKeyDown={(event) => {
          if (event.altKey || event.ctrlKey || event.metaKey) return;
          const way = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : null;
          const moved = way === null ? null : nudge(text, way);
          if (way === null) return;
          event.preventDefault();
          if (moved !== null) onText(moved);
        }}
      />
    </FieldFrame>
  );
}
