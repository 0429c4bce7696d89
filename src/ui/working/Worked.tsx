import type { FigureId } from '../../report/working/types.ts';
import styles from './Worked.module.css';

interface Props {
  /** `undefined`: a number without a working, plain text. */
  readonly id: FigureId | undefined;
  /** As the reader sees it. */
  readonly text: string;
  /** What it is and of what: "film of resistor 3". */
  readonly of: string;
  /** One of several and not the first: reached from that by the arrow keys, no stop of the tab key. */
  readonly among?: boolean;
}

/**
 * A number that opens its working: text to the eye, a button to mouse, finger, keyboard and screen reader. What a press
 * does comes after the first paint, in `WorkingHost`, which hears all of them.
 */
export function Worked({ id, text, of, among = false }: Props) {
  if (!id) return text;
  return (
    <button
      type="button"
      className={styles.worked}
      data-figure={id}
      tabIndex={among ? -1 : undefined}
      aria-label={`${text}, ${of}: how is it computed?`}
      aria-haspopup="dialog"
    >
      {text}
    </button>
  );
}
