import type { ReactNode } from 'react';
import styles from './FieldFrame.module.css';
import { Glyph } from './Glyph.tsx';

interface Props {
  readonly id: string;
  readonly label: string;
  /** Said after the label for those who do not see the unit beside the input. */
  readonly unit?: string;
  readonly help: string;
  readonly problem: string | null;
  readonly warning?: string | null;
  /** Label before the control, above it, or after it as beside a checkbox. */
  readonly shape?: 'row' | 'tall' | 'tick';
  /** A way back to the value of a new design, said in words. */
  readonly byDefault?: string | null;
  readonly onReset?: () => void;
  readonly children: ReactNode;
}

/** Id of what describes a control: its help, and what is wrong with its value. */
export function noteIdOf(id: string): string {
  return `${id}-note`;
}

/** Label, control, and below them one place for help or, instead of it, for what is wrong: nothing moves when it changes. */
export function FieldFrame({
  id,
  label,
  unit,
  help,
  problem,
  warning = null,
  shape = 'row',
  byDefault = null,
  onReset,
  children,
}: Props) {
  const message = problem ?? warning;
  const state = problem !== null ? 'problem' : warning !== null ? 'warning' : 'help';
  return (
    <div className={styles.field} data-shape={shape}>
      <label htmlFor={id}>
        {label} {unit !== undefined && unit !== '' && <span className="unseen">({unit})</span>}
      </label>
      {children}
      <p id={noteIdOf(id)} className={styles.note} data-state={state}>
        <span className={styles.help}>{help}</span>
        {message !== null && <span className={styles.message}>{message}</span>}
      </p>
      {byDefault !== null && onReset && (
        // By keyboard it lies on the way only where something is wrong: clearing a field leads to it.
        <button
          type="button"
          className={styles.reset}
          tabIndex={problem === null ? -1 : 0}
          aria-label={`${label}: back to the default, ${byDefault}`}
          title={`Back to the default, ${byDefault}`}
          onClick={onReset}
        >
          <Glyph name="reset" />
        </button>
      )}
    </div>
  );
}
