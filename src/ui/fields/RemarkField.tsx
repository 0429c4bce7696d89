import { useActions, useField } from '../bench/DesignContext.ts';
import { FieldFrame, noteIdOf } from '../kit/FieldFrame.tsx';
import { fieldId } from './fieldId.ts';
import styles from './RemarkField.module.css';

/** A text of several lines. */
export function RemarkField({ path }: { readonly path: string }) {
  const { label, help, text, problem } = useField(path);
  const { setText } = useActions();
  const id = fieldId(path);
  return (
    <FieldFrame id={id} label={label} help={help} problem={problem} shape="tall">
      <textarea
        id={id}
        className={styles.area}
        rows={4}
        value={text}
        aria-invalid={problem !== null}
        aria-describedby={noteIdOf(id)}
        onChange={(event) => setText(path, event.currentTarget.value)}
      />
    </FieldFrame>
  );
}
