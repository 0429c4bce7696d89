import { percent } from '../../../report/words.ts';
import { Button } from '../../kit/Button.tsx';
import type { StudyView } from '../../studies/useStudy.ts';
import styles from './WhatIfPartsVary.module.css';

/** Starts the draws, shows how far they are, stops them; says when what stands below belongs to another design or question. */
export function DrawProgress({
  study,
  ready,
  isThere,
}: {
  readonly study: StudyView<'tolerance'>;
  /** Everything that was typed reads well. */
  readonly ready: boolean;
  /** Whether an answer stands below. */
  readonly isThere: boolean;
}) {
  const { running, fresh, progress, fault, start, cancel } = study;
  return (
    <div className={styles.progress}>
      {running ? (
        <Button onClick={cancel}>Stop</Button>
      ) : (
        <Button onClick={start} disabled={!ready || fresh}>
          {isThere ? 'Draw again' : 'Draw boxes'}
        </Button>
      )}
      {running && (
        <>
          <progress value={progress} aria-label="Boxes drawn" />
          <span>{percent(progress)}; what stands here is the estimate so far.</span>
        </>
      )}
      <span role="status">{running ? '' : standing({ fresh, fault, isThere })}</span>
    </div>
  );
}

function standing({
  fresh,
  fault,
  isThere,
}: {
  readonly fresh: boolean;
  readonly fault: string | null;
  readonly isThere: boolean;
}): string {
  if (fault !== null) return `This could not be computed: ${fault}.`;
  if (!isThere) return '';
  return fresh ? 'All boxes drawn.' : 'Out of date or stopped: draw again for the design as it stands.';
}
