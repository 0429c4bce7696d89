import { type ReactNode, useEffect, useId, useRef } from 'react';
import { Button } from './Button.tsx';
import styles from './Dialog.module.css';
import { Glyph } from './Glyph.tsx';

interface Props {
  readonly title: string;
  /** Room for two columns, as high as it needs at most: what is in it may change without the dialog moving. */
  readonly wide?: boolean;
  /** All the room there is: for a picture. */
  readonly large?: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** The browser's own modal dialog, open as long as it is rendered. */
export function Dialog({ title, wide = false, large = false, onClose, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    const element = dialog.current;
    if (element !== null && !element.open) element.showModal();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={styles.dialog}
      data-wide={wide}
      data-large={large}
      aria-labelledby={heading}
      onClose={onClose}
    >
      <header className={styles.head}>
        <h2 id={heading}>{title}</h2>
        <Button small aria-label="Close" onClick={() => dialog.current?.close()}>
          <Glyph name="remove" />
        </Button>
      </header>
      {children}
    </dialog>
  );
}
