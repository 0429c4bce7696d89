import { type DragEvent, type ReactNode, useState } from 'react';
import styles from './TableDrop.module.css';

interface Props {
  /** Id of its heading. */
  readonly heading: string;
  readonly onFile: (file: File) => void;
  readonly children: ReactNode;
}

/** A part of the form onto which a file of a table may be dropped; elsewhere on the page a dropped file is a design. */
export function TableDrop({ heading, onFile, children }: Props) {
  const [over, setOver] = useState(false);
  const carriesFile = (event: DragEvent) => event.dataTransfer.types.includes('Files');
  return (
    <section
      aria-labelledby={heading}
      className={styles.drop}
      data-over={over}
      data-takes-files
      onDragOver={(event) => {
        if (!carriesFile(event)) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={({ currentTarget, relatedTarget }) => {
        if (!(relatedTarget instanceof Node && currentTarget.contains(relatedTarget))) setOver(false);
      }}
      onDrop={(event) => {
        if (!carriesFile(event)) return;
        event.preventDefault();
        setOver(false);
        const file = event.dataTransfer.files[0];
        if (file) onFile(file);
      }}
    >
      {children}
    </section>
  );
}
