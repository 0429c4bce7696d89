import type { ComponentProps } from 'react';
import styles from './TextBox.module.css';

type Props = Omit<ComponentProps<'input'>, 'onChange'> & {
  readonly onText: (text: string) => void;
  readonly invalid?: boolean;
  /** Shown inside the box at its end; a bare number is in it. */
  readonly unit?: string;
};

/** One line of text as typed. Spelling help and completion would only get in the way of numbers. */
export function TextBox({ onText, invalid = false, unit = '', className, ...rest }: Props) {
  return (
    <span className={`${styles.box} ${className ?? ''}`} data-invalid={invalid}>
      <input
        type="text"
        autoComplete="off"
        spellCheck={false}
        {...rest}
        aria-invalid={invalid}
        onChange={(event) => onText(event.currentTarget.value)}
      />
      {unit !== '' && (
        <span className={styles.unit} aria-hidden="true">
          {unit}
        </span>
      )}
    </span>
  );
}
