import { useDeferredValue, useId, useState } from 'react';
import type { WorkedFigure } from '../../report/working/types.ts';
import { TextBox } from '../kit/TextBox.tsx';
import styles from './FigureFinder.module.css';
import { Worked } from './Worked.tsx';

/** All figures that have a working, narrowed to those whose title or value holds what is typed. */
export function FigureFinder({ figures }: { readonly figures: readonly WorkedFigure[] }) {
  const [typed, setTyped] = useState('');
  const wanted = useDeferredValue(typed).trim().toLowerCase();
  const id = useId();
  const found = figures.filter(({ title, value }) =>
    wanted.split(/\s+/).every((word) => `${title} ${value}`.toLowerCase().includes(word)),
  );
  return (
    <>
      <p className={styles.find}>
        <label htmlFor={id}>Find a figure</label>
        <TextBox className={styles.box} id={id} type="search" value={typed} onText={setTyped} />
        <span role="status">
          {found.length === figures.length ? figures.length : `${found.length} of ${figures.length}`} figures
        </span>
      </p>
      <ul className={styles.list} aria-label="Figures with a working">
        {found.map((figure, i) => (
          <li key={figure.id}>
            {figure.title} <Worked id={figure.id} text={figure.value} of={figure.title} among={i > 0} />
          </li>
        ))}
      </ul>
    </>
  );
}
