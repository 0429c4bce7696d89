import type { Figure } from '../../report/types.ts';
import styles from './KeyFigures.module.css';

export function KeyFigures({ figures }: { readonly figures: readonly Figure[] }) {
  return (
    <dl className={styles.figures}>
      {figures.map(({ key, label, value }) => (
        <div key={key}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
