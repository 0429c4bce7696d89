import type { ChangeReport, Figure } from '../../report/types.ts';
import { Worked } from '../working/Worked.tsx';
import styles from './KeyFigures.module.css';

interface Props {
  readonly figures: readonly Figure[];
  readonly change: ChangeReport | null;
}

/** What one reads off first, each with what the last edit did to it. */
export function KeyFigures({ figures, change }: Props) {
  return (
    <dl className={styles.figures}>
      {figures.map(({ key, label, value, amount }, i) => (
        <div key={key}>
          <dt>{label}</dt>
          <dd>
            <Worked id={amount.figure} text={value} of={label} among={i > 0} />
          </dd>
          <dd className={styles.change}>
            {change?.figures[key] !== undefined && (
              <>
                <span className="unseen">changed by </span>
                {change.figures[key]}
              </>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
