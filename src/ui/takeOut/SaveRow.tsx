import { use, useState } from 'react';
import type { TextTable } from '../../report/types.ts';
import styles from './SaveRow.module.css';
import { TakeOutContext } from './TakeOutContext.ts';

interface Props {
  /** Ends the name of the file. */
  readonly id: string;
  /** What is saved, in words. */
  readonly caption: string;
  /** The figure around this row may be saved as a picture. */
  readonly picture?: boolean;
  readonly table?: TextTable;
}

type Kind = 'SVG' | 'PNG' | 'CSV';

const troubles: Readonly<Record<Kind, string>> = {
  SVG: 'This browser could not draw the picture.',
  PNG: 'This browser could not paint the PNG. The SVG shows the same.',
  CSV: 'The table could not be written. Open the page again; the design is kept.',
};

/** One quiet line under a figure or a table: the ways to take it out as a file. */
export function SaveRow({ id, caption, picture = false, table }: Props) {
  const shown = use(TakeOutContext);
  const [trouble, setTrouble] = useState('');
  if (shown === null) return null;
  const { title } = shown.report;
  const kinds: readonly Kind[] = [
    ...(picture ? (['SVG', 'PNG'] as const) : []),
    ...(table ? (['CSV'] as const) : []),
  ];

  const save = async (kind: Kind, button: HTMLElement) => {
    setTrouble('');
    try {
      const { savePicture, saveTable } = await import('./takeOut.ts');
      const figure = button.closest('figure');
      if (kind !== 'CSV' && figure) await savePicture(kind, figure, { id, caption, title });
      else if (table) saveTable(table, title);
    } catch {
      setTrouble(troubles[kind]);
    }
  };
  return (
    <div className={styles.row} data-unpainted>
      <span aria-hidden="true">Save</span>
      {kinds.map((kind) => (
        <button
          key={kind}
          type="button"
          aria-label={`Save as ${kind}: ${caption}`}
          onClick={({ currentTarget }) => void save(kind, currentTarget)}
        >
          {kind}
        </button>
      ))}
      <span role="status">{trouble}</span>
    </div>
  );
}
