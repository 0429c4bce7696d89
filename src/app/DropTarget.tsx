import { useEffect, useRef, useState } from 'react';
import styles from './DropTarget.module.css';

/** A design file may be dropped anywhere on the page, but for places that take files of their own. */
export function DropTarget({ onFile }: { readonly onFile: (file: File) => void }) {
  const [over, setOver] = useState(false);
  const take = useRef(onFile);
  take.current = onFile;
  useEffect(() => {
    const carriesFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    const isTakenThere = ({ target }: DragEvent) =>
      target instanceof Element && target.closest('[data-takes-files]') !== null;
    const enter = (event: DragEvent) => {
      if (!carriesFile(event)) return;
      event.preventDefault();
      setOver(!isTakenThere(event));
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const drop = (event: DragEvent) => {
      if (!carriesFile(event)) return;
      event.preventDefault();
      setOver(false);
      const file = isTakenThere(event) ? null : event.dataTransfer?.files[0];
      if (file) take.current(file);
    };
    window.addEventListener('dragover', enter);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', enter);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
    };
  }, []);
  return over ? (
    <div className={styles.target} role="status">
      Drop the design file to open it
    </div>
  ) : null;
}
