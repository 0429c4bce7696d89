import { useField } from '../bench/DesignContext.ts';
import { TextBox } from '../kit/TextBox.tsx';
import { fieldId } from './fieldId.ts';
import { useTyping } from './useTyping.ts';

interface Props {
  readonly path: string;
  /** Its name, for the label stands at the head of a column. */
  readonly name: string;
  /** Id of the place where the table tells what is wrong. */
  readonly noteId: string;
  readonly onPaste?: (text: string) => boolean;
}

/** One typed input in a table; what is wrong with it is told under the table. */
export function CellBox({ path, name, noteId, onPaste }: Props) {
  const view = useField(path);
  return (
    <TextBox
      id={fieldId(path)}
      aria-label={view.unit === '' ? name : `${name} (${view.unit})`}
      aria-describedby={noteId}
      {...useTyping(view)}
      onPaste={(event) => {
        if (onPaste?.(event.clipboardData.getData('text'))) event.preventDefault();
      }}
    />
  );
}
