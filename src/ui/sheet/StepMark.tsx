import { createContext, use } from 'react';
import type { FigureId } from '../../report/working/types.ts';

/** The step that gives each figure, while the pages of the working are printed along; empty otherwise. */
export const noSteps: ReadonlyMap<FigureId, number> = new Map();
export const WorkedAt = createContext(noSteps);

/** The number of the step behind a figure of the summary; nothing where those pages are not printed along. */
export function StepMark({ figure }: { readonly figure: FigureId | undefined }) {
  const step = use(WorkedAt).get(figure ?? '');
  return step !== undefined && <sup className="step">s{step}</sup>;
}

/** What the marks mean. */
export function StepMarkSays() {
  return (
    use(WorkedAt).size > 0 && (
      <span>
        <sup className="step">s1</sup>step on the pages of the working.
      </span>
    )
  );
}
