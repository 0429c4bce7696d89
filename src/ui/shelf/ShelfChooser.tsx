import { type FormEvent, useEffect, useMemo, useRef, useState } from 'react';
import type { OwnEntry } from '../../model/shelf/entry.ts';
import { type KindId, kinds } from '../../model/shelf/kinds.ts';
import { writesOf } from '../../model/shelf/standing.ts';
import { firstChoice, foundRows, type ShelfRow, shelfRows } from '../../report/shelfRows.ts';
import { useActions, useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { TextBox } from '../kit/TextBox.tsx';
import { EntryDetail } from './EntryDetail.tsx';
import { OwnEntries } from './OwnEntries.tsx';
import styles from './ShelfChooser.module.css';
import { useOwnShelf, useShelfActions } from './ShelfContext.ts';

interface Props {
  readonly kind: KindId;
  readonly place: string;
  /** Id of the entry looked at; `null` for the one that the inputs are like. */
  readonly chosen: string | null;
  readonly onChoose: (id: string | null) => void;
  /** What was done last, in a sentence. */
  readonly told: string;
  readonly onTell: (told: string) => void;
  readonly onKeepPresent: () => void;
  readonly onEdit: (entry: OwnEntry) => void;
}

/** A list to look through by typing or with the arrow keys, and beside it what the entry looked at would change. */
export function ShelfChooser(props: Props) {
  const { kind, place, chosen, onChoose, told, onTell, onKeepPresent, onEdit } = props;
  const design = useDesign((state) => state.design);
  const system = useDesign((state) => state.system);
  const own = useOwnShelf(({ entries }) => entries);
  const { setMany } = useActions();
  const { remove } = useShelfActions();
  const [query, setQuery] = useState('');
  const rows = useMemo(() => shelfRows(design, kind, place, own, system), [design, kind, place, own, system]);
  const found = foundRows(rows, query);
  const best = query.trim() === '' ? firstChoice(found, design, kind) : (found[0] ?? null);
  const shown = found.find(({ id }) => id === chosen) ?? best;

  const take = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (shown === null) return;
    setMany(writesOf(kind, place, shown), `From the shelf: ${shown.name}`);
    // Closed by the browser, so that it gives the focus back to where it was.
    event.currentTarget.closest('dialog')?.close();
  };
  return (
    <form className={styles.chooser} onSubmit={take}>
      <div className={styles.find}>
        <label htmlFor="shelf-find">Find</label>
        <TextBox
          id="shelf-find"
          type="search"
          value={query}
          onText={(text) => {
            setQuery(text);
            onChoose(null);
          }}
          ref={(box) => begin(box, !isTouch())}
          onKeyDown={(event) => {
            if (event.key !== 'ArrowDown') return;
            event.preventDefault();
            event.currentTarget.form?.querySelector<HTMLInputElement>('input[type="radio"]:checked')?.focus();
          }}
        />
        <p role="status">{query === '' ? '' : `${found.length} of ${rows.length}`}</p>
      </div>
      <EntryList kind={kind} rows={found} shown={shown} query={query} onChoose={onChoose} />
      <div className={styles.detail}>
        {shown !== null && (
          <EntryDetail
            row={shown}
            onEdit={onEdit}
            onRemove={({ id }) => {
              onTell('');
              onChoose(null);
              void remove(id);
            }}
          />
        )}
      </div>
      <div className={styles.choices}>
        <Button
          type="submit"
          className={styles.main ?? ''}
          disabled={shown === null}
          aria-describedby="shelf-effect"
        >
          Set these values
        </Button>
        <Button onClick={(event) => event.currentTarget.closest('dialog')?.close()}>Leave as it is</Button>
      </div>
      <OwnEntries kind={kind} told={told} onTell={onTell} onKeepPresent={onKeepPresent} />
    </form>
  );
}

interface ListProps {
  readonly kind: KindId;
  readonly rows: readonly ShelfRow[];
  readonly shown: ShelfRow | null;
  readonly query: string;
  readonly onChoose: (id: string) => void;
}

function EntryList({ kind, rows, shown, query, onChoose }: ListProps) {
  const checked = useRef<HTMLInputElement>(null);
  useEffect(() => {
    checked.current?.scrollIntoView?.({ block: 'nearest' });
    // Whatever had the focus is gone, as after an entry was written.
    if (document.activeElement === document.body) checked.current?.focus();
  }, []);
  return (
    <fieldset className={styles.list}>
      <legend className="unseen">{kinds[kind].title}</legend>
      {rows.length === 0 && <p className={styles.none}>Nothing here has “{query.trim()}” in it.</p>}
      {rows.map((row) => (
        <label key={row.id} className={styles.entry}>
          <input
            type="radio"
            name="shelf-entry"
            value={row.id}
            checked={row === shown}
            ref={(radio) => {
              if (row === shown) checked.current = radio;
              begin(radio, row === shown && isTouch());
            }}
            onChange={() => onChoose(row.id)}
          />
          <span>
            {row.name} {row.own !== null && <em className={styles.own}>yours</em>}
            <small>{row.brief}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}

/** The browser gives the focus to what is marked so when it opens the dialog. */
function begin(control: HTMLInputElement | null, here: boolean): void {
  control?.toggleAttribute('autofocus', here);
}

/** Where a keyboard would come up and cover half of the list, the list goes first. */
function isTouch(): boolean {
  return typeof matchMedia === 'function' && matchMedia('(pointer: coarse)').matches;
}
