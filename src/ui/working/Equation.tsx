import { createElement, memo } from 'react';
import type { MathClause } from '../../report/working/equation/equationTree.ts';
import { putIn } from '../../report/working/equation/putIn.ts';
import { readEquation } from '../../report/working/equation/readEquation.ts';
import type { WorkingStep } from '../../report/working/types.ts';
import { reachWhileScrolling } from '../questions/DataTable.tsx';
import styles from './Equation.module.css';
import { asClause, clauseText, equationLines } from './equationLines.ts';
import { clauseElement } from './mathElements.ts';

/** An equation of a card, set as one would print it. */
export const Equation = memo(function Equation({ text }: { readonly text: string }) {
  return <Lines clauses={readEquation(text)} />;
});

/** A name as it stands in the equation. */
export const InlineMath = memo(function InlineMath({ text }: { readonly text: string }) {
  return createElement(
    'math',
    { alttext: text, className: styles.inline },
    ...readEquation(text).map(({ node, end }) => clauseElement(node, end)),
  );
});

/** The same with the values put in. */
export function ValuesPutIn({ step }: { readonly step: WorkingStep }) {
  const filled = putIn(readEquation(step.equation), step.symbols, step.result);
  return <Lines clauses={filled.map(asClause)} />;
}

/** Every equation on a line of its own, with the words that belong to it behind it; a line too long scrolls in its box. */
function Lines({ clauses }: { readonly clauses: readonly MathClause[] }) {
  return (
    <div className={styles.lines} ref={reachWhileScrolling}>
      {equationLines(clauses).map((line) => (
        <div key={line.map(clauseText).join('')} className={styles.line}>
          {line.map((clause) =>
            createElement(
              'math',
              {
                key: clauseText(clause),
                display: 'block',
                alttext: clauseText(clause),
                className: styles.math,
              },
              clauseElement(clause.node, clause.end),
            ),
          )}
        </div>
      ))}
    </div>
  );
}
