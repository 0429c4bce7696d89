import { type MathClause, type MathNode, plainText } from '../../report/working/equation/equationTree.ts';

/** A clause as text: what a screen reader without mathematics says. */
export const clauseText = ({ node, end }: MathClause) => plainText(node) + end;

/** Every equation begins a line; the words that belong to it stand behind it. */
export function equationLines(clauses: readonly MathClause[]): MathClause[][] {
  const lines: MathClause[][] = [];
  for (const clause of clauses) {
    const last = lines.at(-1);
    if (clause.equates || last === undefined) lines.push([clause]);
    else last.push(clause);
  }
  return lines;
}

/** An equation by itself, as a clause. */
export const asClause = (node: MathNode): MathClause => ({ node, end: '', equates: true });
