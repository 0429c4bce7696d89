import { useRef, useState } from 'react';
import { serialiseShelf, shelfFileName } from '../../io/shelfFile.ts';
import type { ReadProblem } from '../../model/readDesign.ts';
import type { KindId } from '../../model/shelf/kinds.ts';
import { keepingWords, takenInWords } from '../../report/shelfWords.ts';
import { Button } from '../kit/Button.tsx';
import { readTextFile, saveTextFile } from '../kit/textFiles.ts';
import styles from './OwnEntries.module.css';
import { useOwnShelf, useShelfActions } from './ShelfContext.ts';

interface Props {
  readonly kind: KindId;
  readonly told: string;
  readonly onTell: (told: string) => void;
  readonly onKeepPresent: () => void;
}

interface Refused {
  readonly name: string;
  readonly problems: readonly ReadProblem[];
}

/** What can be done with the reader's own entries as a whole, and what has become of them. */
export function OwnEntries({ kind, told, onTell, onKeepPresent }: Props) {
  const entries = useOwnShelf((state) => state.entries);
  const removed = useOwnShelf((state) => state.removed);
  const keeping = useOwnShelf((state) => state.keeping);
  const unread = useOwnShelf((state) => state.unread);
  const { importText, putBack } = useShelfActions();
  const picker = useRef<HTMLInputElement>(null);
  const [refused, setRefused] = useState<Refused | null>(null);
  const open = async (file: File) => {
    const read = await readTextFile(file);
    const result = read.ok
      ? await importText(read.text)
      : { ok: false as const, problems: [{ path: '', reason: read.reason }] };
    setRefused(result.ok ? null : { name: file.name, problems: result.problems });
    onTell(result.ok ? takenInWords(result.added, result.there) : '');
  };
  return (
    <div className={styles.own}>
      <div className={styles.choices}>
        <Button onClick={onKeepPresent}>Keep the present values as an entry of my own…</Button>
        <Button
          disabled={entries.length === 0}
          onClick={() => saveTextFile(serialiseShelf(entries), shelfFileName)}
        >
          Save my entries
        </Button>
        <Button onClick={() => picker.current?.click()}>Open entries…</Button>
        <input
          ref={picker}
          type="file"
          hidden
          accept=".json,application/json"
          aria-label="File of shelf entries"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            if (file) void open(file);
            // The same file may be chosen again after it was mended.
            currentTarget.value = '';
          }}
        />
      </div>
      <p className={styles.keeping} data-refused={keeping === 'refused'}>
        {keepingWords(keeping, unread)}
      </p>
      <div role="status">
        {told !== '' && <p>{told}</p>}
        {told === '' && removed?.kind === kind && (
          <p>
            “{removed.name}” is off the shelf.{' '}
            <Button autoFocus onClick={() => void putBack()}>
              Put it back
            </Button>
          </p>
        )}
      </div>
      {refused !== null && (
        <div role="alert" className={styles.refused}>
          <p>“{refused.name}” was not taken in; the shelf is as it was.</p>
          <ul>
            {refused.problems.map(({ path, reason }) => (
              <li key={`${path} ${reason}`}>
                {path !== '' && <code>{path}</code>} {reason}
              </li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
}
