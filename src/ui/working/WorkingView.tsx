import { useMemo, useRef } from 'react';
import { figureSteps } from '../../report/working/figureSteps.ts';
import type { FigureId, WorkingReport } from '../../report/working/types.ts';
import { workingText } from '../../report/working/workingText.ts';
import { Button } from '../kit/Button.tsx';
import { Select } from '../kit/Select.tsx';
import { askWhatToPrint } from '../sheet/askWhatToPrint.ts';
import { CopyText } from './CopyText.tsx';
import { FoldedStep } from './FoldedStep.tsx';
import { StepBody, StepHead } from './StepBody.tsx';
import styles from './Working.module.css';

interface Props {
  readonly report: WorkingReport;
  readonly id: FigureId;
  /** Whether the report is that of the design as it now stands. */
  readonly fresh: boolean;
  readonly onChoose: (id: FigureId) => void;
}

/** The step that gives a figure, then all that it rests on in the order of computation; and the way to other figures. */
export function WorkingView({ report, id, fresh, onChoose }: Props) {
  const { figures, sentence } = report;
  const at = figures.findIndex((figure) => figure.id === id);
  const shown = useMemo(() => figureSteps(report, id), [report, id]);
  const last = shown?.steps.at(-1);
  const before = shown?.steps.slice(0, -1) ?? [];
  const top = useRef<HTMLDivElement>(null);
  const choose = (next: FigureId | undefined) => {
    if (next === undefined) return;
    onChoose(next);
    top.current?.scrollIntoView({ block: 'end' });
  };
  return (
    <div className={styles.working} aria-busy={!fresh}>
      <div ref={top} className={styles.bar}>
        <Button disabled={at <= 0} onClick={() => choose(figures[at - 1]?.id)}>
          Previous
        </Button>
        <Select
          aria-label="Figure"
          className={styles.choice}
          value={shown ? id : ''}
          onChoose={choose}
          options={[
            ...(shown ? [] : [{ value: '', label: 'Choose a figure' }]),
            ...figures.map((each) => ({ value: each.id, label: `${each.title}: ${each.value}` })),
          ]}
        />
        <Button disabled={at < 0 || at === figures.length - 1} onClick={() => choose(figures[at + 1]?.id)}>
          Next
        </Button>
      </div>
      {!fresh && (
        <p className={styles.small} role="status">
          The design has changed; this is the working of the answer before.
        </p>
      )}
      {last === undefined ? (
        <p>The present answer has no working for this number. Choose another figure above.</p>
      ) : (
        <>
          <article className={styles.step} aria-labelledby="working-last">
            <h3 id="working-last">
              <StepHead step={last} />
            </h3>
            <StepBody step={last} />
          </article>
          {before.length > 0 && (
            <>
              <h3 className={styles.rests}>What it rests on, in the order of computation</h3>
              <ol key={id} className={styles.chain}>
                {before.map((step) => (
                  <FoldedStep key={step.number} step={step} />
                ))}
              </ol>
            </>
          )}
          <p className={styles.small}>{sentence}</p>
          <div className={styles.ends}>
            <CopyText text={() => workingText(report, id) ?? ''} />
            <Button
              onClick={({ currentTarget }) => {
                currentTarget.closest('dialog')?.close();
                askWhatToPrint(['working']);
              }}
            >
              Print…
            </Button>
          </div>
        </>
      )}
    </div>
  );
}
