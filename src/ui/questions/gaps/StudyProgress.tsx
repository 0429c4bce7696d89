import type { JobName } from '../../../workers/studies/jobs.ts';
import { Button } from '../../kit/Button.tsx';
import type { StudyView } from '../../studies/useStudy.ts';
import styles from './WhichGap.module.css';

/** Runs shorter than a moment need no bar; the place for it is kept, so that nothing jumps. */
export function StudyProgress({ study }: { readonly study: StudyView<JobName> }) {
  const { running, fresh, progress, start, cancel, fault } = study;
  return (
    <div className={styles.progress}>
      {running && (
        <>
          <progress value={progress} aria-label="Being computed" />
          <Button onClick={cancel}>Stop</Button>
        </>
      )}
      {!running && !fresh && (
        <>
          <span>{fault === null ? 'Not computed for the present values.' : `Failed: ${fault}`}</span>
          <Button onClick={start}>Compute</Button>
        </>
      )}
    </div>
  );
}
