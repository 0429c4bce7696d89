import { useActions, useDesign } from '../ui/bench/DesignContext.ts';
import { Button } from '../ui/kit/Button.tsx';
import { Glyph } from '../ui/kit/Glyph.tsx';
import styles from './Notice.module.css';

/** Why something was refused, or what was noted on opening a file. Floats, so that the page stays where it is. */
export function Notice({ onPlace }: { readonly onPlace: (place: HTMLElement | null) => void }) {
  const notice = useDesign((state) => state.notice);
  const keeping = useDesign((state) => state.keeping);
  const { dismissNotice, setKeeping } = useActions();
  const text =
    notice ??
    (keeping === 'refused'
      ? 'This browser keeps nothing between visits here. Save the design as a file before you leave.'
      : null);
  return (
    <div ref={onPlace} className={styles.place} role="status">
      {text !== null && (
        <p className={styles.notice}>
          {text}
          <Button
            small
            aria-label="Dismiss"
            onClick={notice === null ? () => setKeeping('unknown') : dismissNotice}
          >
            <Glyph name="remove" />
          </Button>
        </p>
      )}
    </div>
  );
}
