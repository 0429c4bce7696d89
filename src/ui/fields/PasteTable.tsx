import { useId, useState } from 'react';
import { Button } from '../kit/Button.tsx';
import { Disclosure } from '../kit/Disclosure.tsx';
import styles from './PasteTable.module.css';

interface Props {
  readonly summary: string;
  readonly help: string;
  /** @returns why the text was not taken, `null` where it was */
  readonly onTake: (text: string) => string | null;
}

/** A place for a table copied from a spreadsheet; a refused one stays as it was pasted. */
export function PasteTable({ summary, help, onTake }: Props) {
  const [text, setText] = useState('');
  const [told, setTold] = useState('');
  const id = useId();
  const take = () => {
    const refusal = onTake(text);
    setTold(refusal ?? 'Taken over. Undo brings back what was there.');
    if (refusal === null) setText('');
  };
  return (
    <Disclosure summary={summary}>
      <div className={styles.paste}>
        <label htmlFor={id} className="unseen">
          {summary}
        </label>
        <textarea
          id={id}
          rows={5}
          spellCheck={false}
          aria-describedby={`${id}-help`}
          value={text}
          onChange={({ currentTarget }) => setText(currentTarget.value)}
        />
        <p id={`${id}-help`}>{help}</p>
        <Button onClick={take} disabled={text.trim() === ''}>
          Take it over
        </Button>
        <p role="status">{told}</p>
      </div>
    </Disclosure>
  );
}
