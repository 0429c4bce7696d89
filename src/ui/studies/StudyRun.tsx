import { percent } from '../../report/words.ts';
import { Button } from '../kit/Button.tsx';
import styles from './StudyRun.module.css';
import type { StudyView } from './useStudy.ts';

interface Props {
  /** What the button does: "Find the best fins". */
  readonly does: string;
  readonly study: Pick<StudyView<never>, 'running' | 'progress' | 'fault' | 'start' | 'cancel'>;
  /** Why it cannot be asked now; `null` where it can. */
  readonly hindered: string | null;
}

/** Starts a study that takes a while; how far it is, and the way out of it. */
export function StudyRun({ does, study, hindered }: Props) {
  const { running, progress, fault, start, cancel } = study;
  return (
    <div className={styles.run}>
      {running ? (
        <Button onClick={cancel}>Stop</Button>
      ) : (
        <Button onClick={start} disabled={hindered !== null}>
          {does}
        </Button>
      )}
      {running && <progress aria-label={does} value={progress} />}
      <span role="status" className={styles.note}>
        {running ? percent(progress) : (hindered ?? (fault === null ? '' : `This went wrong: ${fault}`))}
      </span>
    </div>
  );
}
