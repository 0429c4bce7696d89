import { useRef } from 'react';
import type { FigureId, WorkingReport, WorkingStep } from '../../report/working/types.ts';
import { workingText } from '../../report/working/workingText.ts';
import { Button } from '../kit/Button.tsx';
import { Select } from '../kit/Select.tsx';
import { askWhatToPrint } from '../sheet/askWhatToPrint.ts';
import { CopyText } from './CopyText.tsx';
import { goToStep, stepId } from './goToStep.ts';
import { StepArticle } from './StepArticle.tsx';
import styles from './Working.module.css';

interface Props {
  readonly report: WorkingReport;
  readonly id: FigureId;
  /** Whether the report is that of the design as it now stands. */
  readonly fresh: boolean;
  readonly onChoose: (id: FigureId) => void;
}

/** The steps that lead to a figure, from the inputs to the figure itself, and the way to its neighbours. */
export function WorkingView({ report, id, fresh, onChoose }: Props) {
  const { figures, steps, sentence } = report;
  const at = figures.findIndex((figure) => figure.id === id);
  const figure = figures[at];
  const chain = figure?.steps.flatMap((number) => steps.filter((step) => step.number === number)) ?? [];
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
          value={figure?.id ?? ''}
          onChoose={choose}
          options={[
            ...(figure ? [] : [{ value: '', label: 'Choose a figure' }]),
            ...figures.map((each) => ({ value: each.id, label: `${each.title}: ${each.value}` })),
          ]}
        />
        <Button disabled={at < 0 || at === figures.length - 1} onClick={() => choose(figures[at + 1]?.id)}>
          Next
        </Button>
      </div>
      <p className={styles.small} role="status">
        {fresh ? sentence : 'The design has changed; this is the working of the answer before.'}
      </p>
      {figure ? (
        <>
          <Chain steps={chain} />
          {chain.map((step) => (
            <StepArticle key={step.number} step={step} />
          ))}
          <div className={styles.ends}>
            <CopyText text={() => workingText(report, figure.id) ?? ''} />
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
      ) : (
        <p>The present answer has no working for this number. Choose another figure above.</p>
      )}
    </div>
  );
}

/** Where one is: every step with what came out of it, the last being the figure. */
function Chain({ steps }: { readonly steps: readonly WorkingStep[] }) {
  if (steps.length < 2) return null;
  return (
    <nav aria-label="Steps">
      <ol className={styles.chain}>
        {steps.map(({ number, title, where, result }) => (
          <li key={number} value={number}>
            <a href={`#${stepId(number)}`} onClick={goToStep}>
              {title}
              {where === '' ? '' : `, ${where}`}
            </a>{' '}
            <span className={styles.number}>{result.value}</span>
          </li>
        ))}
      </ol>
    </nav>
  );
}
