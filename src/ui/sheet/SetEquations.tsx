import { createElement } from 'react';
import { brokenLine } from '../../report/working/equation/brokenLine.ts';
import type { MathClause } from '../../report/working/equation/equationTree.ts';
import { readEquation } from '../../report/working/equation/readEquation.ts';
import { width_em } from '../../report/working/equation/width.ts';
import { clauseText, equationLines } from '../working/equationLines.ts';
import { clauseElement } from '../working/mathElements.ts';

/** As many ems as the column of equations holds; what cannot be broken to fit is set smaller, for paper does not scroll. */
const column_em = 25;

/** Equations for paper, each on lines of its own with the words that belong to it. */
export function SetEquations({ text }: { readonly text: string }) {
  return equationLines(text.split('\n').flatMap(readEquation)).map((line) => (
    <div key={line.map(clauseText).join(' ')} className="equation">
      {line.flatMap(broken).map(setClause)}
    </div>
  ));
}

function broken(clause: MathClause): MathClause[] {
  const lines = brokenLine(clause.node, column_em);
  return lines.map((node, i) => ({ ...clause, node, end: i === lines.length - 1 ? clause.end : '' }));
}

function setClause(clause: MathClause, i: number) {
  const size = Math.min(1, column_em / width_em(clause.node));
  return createElement(
    'math',
    {
      key: `${i} ${clauseText(clause)}`,
      display: 'block',
      alttext: clauseText(clause),
      style: size < 1 ? { fontSize: `${size.toFixed(2)}em` } : undefined,
    },
    clauseElement(clause.node, clause.end),
  );
}
