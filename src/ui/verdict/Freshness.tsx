import { findField } from '../../model/fields.ts';
import type { ReadProblem } from '../../model/readDesign.ts';
import styles from './Freshness.module.css';

interface Props {
  readonly problems: readonly ReadProblem[];
  readonly onGoTo: (path: string) => void;
}

/** Said while the answer is older than what stands in the fields, with the way to what is wrong. */
export function Freshness({ problems, onGoTo }: Props) {
  const [first] = problems;
  if (first === undefined) return null;
  const name = findField(first.path)?.label ?? first.path;
  return (
    <p className={styles.line}>
      <span>Last good answer.</span>
      <button type="button" className={styles.link} onClick={() => onGoTo(first.path)}>
        {problems.length === 1 ? 'Mend' : `Mend 1 of ${problems.length}`}: {name}
      </button>
    </p>
  );
}
