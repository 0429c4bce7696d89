import type { JobName } from '../../../workers/studies/jobs.ts';
import { Button } from '../../kit/Button.tsx';
import { useLasting } from '../../studies/useLasting.ts';
import type { StudyView } from '../../studies/useStudy.ts';
import styles from './WhichGap.module.css';

interface Props {
  readonly study: StudyView<JobName>;
  /** Something that reads is asked. */
  readonly isAsked: boolean;
}

/** How far a run is, or why what stands below is not of the present values; the place for it is kept, so that nothing jumps. */
export function StudyProgress({ study, isAsked }: Props) {
  const { running, fresh, progress, start, cancel, fault } = study;
  const isLong = useLasting(running);
  const isLeft = useLasting(isAsked && !running && !fresh);
  return (
    <div className={styles.progress}>
      {isLong && (
        <>
          <progress value={progress} aria-label="Being computed" />
          <Button onClick={cancel}>Stop</Button>
        </>
      )}
      {!isAsked && <span>What stands below belongs to the last values that read.</span>}
      {isLeft && (
        <>
          <span>
            {fault === null ? 'What stands below is not of the present values yet.' : `Failed: ${fault}`}
          </span>
          <Button onClick={start}>Compute</Button>
        </>
      )}
    </div>
  );
}
