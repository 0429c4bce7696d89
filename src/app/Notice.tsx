import type { Keeping } from '../store/state.ts';
import { useActions, useDesign } from '../ui/bench/DesignContext.ts';
import { Button } from '../ui/kit/Button.tsx';
import { Glyph } from '../ui/kit/Glyph.tsx';
import styles from './Notice.module.css';

interface Props {
  readonly onSave: () => void;
  /** Takes the place where other notices may float too. */
  readonly onPlace: (place: HTMLElement | null) => void;
}

const notKept: Partial<Record<Keeping, string>> = {
  refused: 'This browser keeps nothing between visits here. Save the design as a file before you leave.',
  full: 'The browser has no room left to keep this design. Save it as a file, or remove designs.',
};

/** Why something was refused, or what was noted on opening a file. Floats, so that the page stays where it is. */
export function Notice({ onSave, onPlace }: Props) {
  const notice = useDesign((state) => state.notice);
  const keeping = useDesign((state) => state.keeping);
  const { tell, setKeeping } = useActions();
  const text = notice ?? notKept[keeping] ?? null;
  return (
    <div ref={onPlace} className={styles.place} role="status">
      {text !== null && (
        <p className={styles.notice}>
          {text}
          {notice === null && <Button onClick={onSave}>Save as a file</Button>}
          <Button
            small
            aria-label="Dismiss"
            onClick={notice === null ? () => setKeeping('unknown') : () => tell(null)}
          >
            <Glyph name="remove" />
          </Button>
        </p>
      )}
    </div>
  );
}
