import { type ClipboardEvent, type DragEvent, useId, useRef, useState } from 'react';
import { tooLong } from '../../store/paste/tableSize.ts';
import { Button } from '../kit/Button.tsx';
import { Disclosure } from '../kit/Disclosure.tsx';
import styles from './PasteTable.module.css';
import type { TableTaking } from './useTableTaking.ts';

interface Props {
  readonly summary: string;
  readonly help: string;
  readonly table: TableTaking;
}

/** A place for a table copied from a spreadsheet, or for a file of one; a refused text stays as it was pasted. */
export function PasteTable({ summary, help, table }: Props) {
  const [text, setText] = useState('');
  const picker = useRef<HTMLInputElement>(null);
  const id = useId();
  const take = async () => {
    if ((await table.fromText(text)).ok) setText('');
  };
  /** Megabytes in a text box would freeze the page before anybody could refuse them. */
  const keepOut = (event: ClipboardEvent | DragEvent, data: DataTransfer) => {
    const reason = tooLong(data.getData('text'));
    if (reason === null) return;
    event.preventDefault();
    table.tell(reason);
  };
  return (
    <>
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
            onPaste={(event) => keepOut(event, event.clipboardData)}
            onDrop={(event) => keepOut(event, event.dataTransfer)}
            onChange={({ currentTarget }) => setText(currentTarget.value)}
          />
          <p id={`${id}-help`}>{help}</p>
          <div className={styles.choices}>
            <Button onClick={() => void take()} disabled={text.trim() === ''}>
              Take it over
            </Button>
            <Button onClick={() => picker.current?.click()}>Open a table…</Button>
          </div>
          <input
            ref={picker}
            type="file"
            hidden
            accept=".csv,.tsv,.txt,.tab,text/csv,text/tab-separated-values,text/plain"
            aria-label={`File: ${summary}`}
            onChange={({ currentTarget }) => {
              const file = currentTarget.files?.[0];
              if (file) void table.fromFile(file);
              // The same file may be chosen again after it was mended.
              currentTarget.value = '';
            }}
          />
        </div>
      </Disclosure>
      <p role="status" className={styles.told}>
        {table.told}
      </p>
    </>
  );
}
