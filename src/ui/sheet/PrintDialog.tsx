import { type MouseEvent, useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { Button } from '../kit/Button.tsx';
import { Dialog } from '../kit/Dialog.tsx';
import { Switch } from '../kit/Switch.tsx';

import { printAsked } from './askWhatToPrint.ts';
import { furtherPages } from './furtherPages.ts';
import styles from './PrintDialog.module.css';
import { usePrintChoice, wantPages } from './printChoice.ts';

/** Asks what to print behind the summary; without ticks it is the one page, as from the browser's own menu. */
export function PrintDialog() {
  const [asked, setAsked] = useState<readonly string[] | null>(null);
  useEffect(() => {
    const ask = (event: Event) => {
      event.preventDefault();
      setAsked((event as CustomEvent<readonly string[]>).detail);
    };
    window.addEventListener(printAsked, ask);
    return () => window.removeEventListener(printAsked, ask);
  }, []);
  return asked && <Question pages={asked} onClose={() => setAsked(null)} />;
}

interface Asked {
  /** Ticked beside those ticked last. */
  readonly pages: readonly string[];
  readonly onClose: () => void;
}

function Question({ pages, onClose }: Asked) {
  const { ticked: before } = usePrintChoice();
  const [ticked, setTicked] = useState(() => [...new Set([...before, ...pages])]);
  const [trouble, setTrouble] = useState('');
  const first = useRef<HTMLButtonElement>(null);
  // A dialog gives the focus to what it has first, and that is a tick.
  useEffect(() => first.current?.focus(), []);
  const tick = (id: string, on: boolean) =>
    setTicked(
      furtherPages.map((page) => page.id).filter((each) => (each === id ? on : ticked.includes(each))),
    );
  const print = async ({ currentTarget }: MouseEvent) => {
    // The browser gives the focus back as a dialog closes, but not as one is taken away.
    const close = () => currentTarget.closest('dialog')?.close();
    const loads = furtherPages.flatMap(({ id, load }) => (load && ticked.includes(id) ? [load] : []));
    try {
      // A print that waits for nothing begins in the very press, as some browsers want it.
      if (loads.length > 0) await Promise.all(loads.map((load) => load()));
    } catch {
      setTrouble('The evidence could not be fetched. Print without it, or try again.');
      return;
    }
    close();
    flushSync(() => wantPages(ticked));
    window.print();
  };
  return (
    <Dialog title="Print" onClose={onClose}>
      <p>The summary has one page, A4 or Letter, and comes first.</p>
      <fieldset className={styles.pages}>
        <legend>Behind it, on pages of their own</legend>
        {furtherPages.map(({ id, label, says }) => (
          <div key={id}>
            <Switch
              id={`print-${id}`}
              checked={ticked.includes(id)}
              onSwitch={(on) => tick(id, on)}
              describedBy={`print-${id}-says`}
            />
            <label htmlFor={`print-${id}`}>{label}</label>
            <small id={`print-${id}-says`}>{says}</small>
          </div>
        ))}
      </fieldset>
      <p role="status">{trouble}</p>
      <div className={styles.choices}>
        <Button ref={first} onClick={(event) => void print(event)}>
          {ticked.length === 0 ? 'Print the one-page summary' : 'Print the summary and these pages'}
        </Button>
        <Button onClick={({ currentTarget }) => currentTarget.closest('dialog')?.close()}>Cancel</Button>
      </div>
    </Dialog>
  );
}
