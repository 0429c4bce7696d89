import { useState } from 'react';
import type { WorkingStep } from '../../report/working/types.ts';
import { stepId } from './goToStep.ts';
import { StepBody, StepHead } from './StepBody.tsx';
import styles from './Working.module.css';

/** A step in a line with what came of it; the rest is made when somebody unfolds it, for a chain has many. */
export function FoldedStep({ step }: { readonly step: WorkingStep }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <li>
      <details open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary id={stepId(step.number)}>
          <StepHead step={step} /> <span className={styles.number}>{step.result.value}</span>
        </summary>
        {isOpen && <StepBody step={step} />}
      </details>
    </li>
  );
}
