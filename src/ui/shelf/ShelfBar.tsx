import { useEffect, useMemo, useState } from 'react';
import { type KindId, kinds } from '../../model/shelf/kinds.ts';
import { shelfStanding } from '../../report/shelfRows.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import styles from './ShelfBar.module.css';
import { useOwnShelf, useShelfActions } from './ShelfContext.ts';
import { ShelfDialog } from './ShelfDialog.tsx';

interface Props {
  readonly kind: KindId;
  /** The part whose inputs it fills, as `baffle` or `parts[1]`. */
  readonly place: string;
}

/** The way to the shelf beside the inputs that an entry fills, and how they stand to it now. */
export function ShelfBar({ kind, place }: Props) {
  const design = useDesign((state) => state.design);
  const system = useDesign((state) => state.system);
  const own = useOwnShelf(({ entries }) => entries);
  const { open } = useShelfActions();
  const [isOpen, setIsOpen] = useState(false);
  const standing = useMemo(
    () => shelfStanding(design, kind, place, own, system),
    [design, kind, place, own, system],
  );
  useEffect(() => void open(), [open]);
  const noteId = `shelf-${kind}-${place}`;
  return (
    <div className={styles.bar}>
      <Button className={styles.button ?? ''} aria-describedby={noteId} onClick={() => setIsOpen(true)}>
        From the shelf… <span className="unseen">{kinds[kind].title}</span>
      </Button>
      <p id={noteId} className={styles.standing}>
        {standing}
      </p>
      {isOpen && <ShelfDialog kind={kind} place={place} onClose={() => setIsOpen(false)} />}
    </div>
  );
}
