import { useState } from 'react';
import { Button } from '../kit/Button.tsx';
import styles from './Working.module.css';

/** Copies a text; where the browser does not let the page, the text stands there to be copied by hand. */
export function CopyText({ text }: { readonly text: () => string }) {
  const [told, setTold] = useState('');
  const [byHand, setByHand] = useState<string | null>(null);
  const copy = async () => {
    const copied = text();
    try {
      await navigator.clipboard.writeText(copied);
      setByHand(null);
      setTold('Copied.');
    } catch {
      setByHand(copied);
      setTold('The browser does not let the page copy. Select the text below and copy it yourself.');
    }
  };
  return (
    <>
      <Button onClick={() => void copy()}>Copy as text</Button>
      <span role="status">{told}</span>
      {byHand !== null && (
        <label className={styles.byHand}>
          The working as text
          <textarea readOnly rows={8} value={byHand} onFocus={(event) => event.currentTarget.select()} />
        </label>
      )}
    </>
  );
}
