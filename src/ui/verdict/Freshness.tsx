import { findField } from '../../model/fields.ts';
import type { ReadProblem } from '../../model/readDesign.ts';
import styles from './Freshness.module.css';

interface Props {
  readonly problems: readonly ReadProblem[];
  readonly onGoTo: (path: string) => void;
}

/** Whether the answer belongs to what stands in the fields; one line that is always there, so that nothing moves. */
export function Freshness({ problems, onGoTo }: Props) {
  const [first] = problems;
  if (first === undefined) return <p className={styles.line}>Answers what stands in the fields.</p>;
  const name = findField(first.path)?.label ?? first.path;
  return (
    <p className={styles.line} data-stale="true">
      <span>Last good answer.</span>
      <button type="button" className={styles.link} onClick={() => onGoTo(first.path)}>
        {problems.length === 1 ? 'Mend' : `Mend 1 of ${problems.length}`}: {name}
      </button>
    </p>
  );
}
