import { type FormEvent, useEffect, useRef, useState } from 'react';
import type { OwnEntry } from '../../model/shelf/entry.ts';
import { type EntryTexts, readEntryTexts, valueBoxes, valueTexts } from '../../store/entryTexts.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { FieldFrame, noteIdOf } from '../kit/FieldFrame.tsx';
import { TextBox } from '../kit/TextBox.tsx';
import styles from './EntryForm.module.css';
import { useOwnShelf } from './ShelfContext.ts';

interface Props {
  /** What to begin with. */
  readonly entry: OwnEntry;
  readonly place: string;
  readonly isNew: boolean;
  readonly onBack: () => void;
  readonly onDone: (entry: OwnEntry) => Promise<void>;
}

const texts = [
  { key: 'name', label: 'Name', help: 'What you call it; goes onto the sheet where the design names it.' },
  { key: 'source', label: 'Source', help: 'A data sheet, a measurement, a supplier.' },
  { key: 'remark', label: 'Remark', help: 'Anything to mind.' },
];

/** An entry of one's own, as typed; nothing is lost while something in it is wrong. */
export function EntryForm({ entry, place, isNew, onBack, onDone }: Props) {
  const { id, kind, values } = entry;
  const system = useDesign((state) => state.system);
  const others = useOwnShelf(({ entries }) => entries).filter((each) => each.kind === kind && each.id !== id);
  const [typed, setTyped] = useState<EntryTexts>(() => ({
    name: entry.name,
    source: entry.source,
    remark: entry.remark,
    ...valueTexts(values, kind, place, system),
  }));
  const [tried, setTried] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector('input')?.focus(), []);

  const read = readEntryTexts(
    typed,
    kind,
    place,
    system,
    values,
    others.map(({ name }) => name),
  );
  const problems = read.ok || !tried ? {} : read.problems;
  const keep = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (read.ok) void onDone({ id, ...read.entry });
    else document.getElementById(idOf(Object.keys(read.problems)[0] ?? ''))?.focus();
  };
  const box = (key: string, label: string, help: string, unit = '') => (
    <FieldFrame
      key={key}
      id={idOf(key)}
      label={label}
      unit={unit}
      help={help}
      problem={problems[key] ?? null}
      shape={help === '' ? 'row' : 'tall'}
    >
      <TextBox
        id={idOf(key)}
        aria-describedby={noteIdOf(idOf(key))}
        value={typed[key] ?? ''}
        unit={unit}
        invalid={problems[key] !== undefined}
        onText={(text) => setTyped({ ...typed, [key]: text })}
      />
    </FieldFrame>
  );
  return (
    <form ref={form} className={styles.form} onSubmit={keep}>
      <div>{texts.map(({ key, label, help }) => box(key, label, help))}</div>
      <div>{valueBoxes(kind, place, system).map(({ key, label, unit }) => box(key, label, '', unit))}</div>
      <div className={styles.choices}>
        <Button type="submit">{isNew ? 'Put it on the shelf' : 'Keep the change'}</Button>
        <Button onClick={onBack}>Back to the shelf</Button>
      </div>
    </form>
  );
}

function idOf(key: string): string {
  return `shelf-own-${key}`;
}
