import type { FieldView } from '../../store/fieldView.ts';
import { FieldFrame, noteIdOf } from '../kit/FieldFrame.tsx';
import { TextBox } from '../kit/TextBox.tsx';
import { fieldId } from './fieldId.ts';
import { useReset } from './useReset.ts';
import { useTyping } from './useTyping.ts';

/** A quantity, a count or a line of text: label, text as typed, unit, and what is to be said about it. */
export function TypedField({ view }: { readonly view: FieldView }) {
  const { path, label, help, unit, problem, warning, field } = view;
  const id = fieldId(path);
  return (
    <FieldFrame
      id={id}
      label={label}
      unit={unit}
      help={help}
      problem={problem}
      warning={warning}
      shape={field.kind === 'text' ? 'tall' : 'row'}
      {...useReset(view)}
    >
      <TextBox id={id} aria-describedby={noteIdOf(id)} {...useTyping(view)} />
    </FieldFrame>
  );
}
