import { table } from '../makeTable.ts';
import type { TextTable } from '../types.ts';
import { putIn } from './equation/putIn.ts';
import { readEquation } from './equation/readEquation.ts';
import { writtenText } from './equation/writtenText.ts';
import type { FigureId, WorkedFigure, WorkingReport, WorkingStep, WorkingSymbol } from './types.ts';

/** These figures with all steps that lead to them, for paper. Figures without a working are left out. */
export function workingTables(report: WorkingReport, wanted: readonly FigureId[]): TextTable[] {
  const figures = report.figures.filter(({ id }) => wanted.includes(id));
  const used = new Set(figures.flatMap(({ steps }) => steps));
  const steps = report.steps.filter(({ number }) => used.has(number));
  return [figuresTable(figures), stepsTable(steps)].filter(({ rows }) => rows.length > 0);
}

/** The step that gives each figure, by its id. */
export function lastSteps({ figures }: WorkingReport): ReadonlyMap<FigureId, number> {
  return new Map(
    figures.flatMap(({ id, steps }): [FigureId, number][] => {
      const last = steps.at(-1);
      return last === undefined ? [] : [[id, last]];
    }),
  );
}

function figuresTable(figures: readonly WorkedFigure[]): TextTable {
  return table(
    'workedFigures',
    'Figures of the summary and the steps that lead to them',
    ['Figure', '>Value', 'Steps'],
    figures.map(({ title, value, steps }) => [title, value, runs(steps)]),
  );
}

/** Numbers in a row with their gaps: "1–4, 7, 9–12". */
function runs(numbers: readonly number[]): string {
  const sorted = [...numbers].sort((a, b) => a - b);
  const starts = sorted.filter((number, i) => sorted[i - 1] !== number - 1);
  return starts
    .map((first, i) => {
      const next = starts[i + 1];
      const last = next === undefined ? sorted.at(-1) : sorted[sorted.indexOf(next) - 1];
      return last === first ? `${first}` : `${first}–${last}`;
    })
    .join(', ');
}

function stepsTable(steps: readonly WorkingStep[]): TextTable {
  return table(
    'steps',
    'Steps, each with its equation and the values put in',
    [
      '>Step',
      'What',
      { head: 'Equation, and with the values put in', align: 'start', typeset: true },
      'Values put in',
      'Comes to',
      'Range, and here',
      '>Source',
    ],
    steps.map((step) => [
      `${step.number}`,
      step.where === '' ? step.title : `${step.title}, ${step.where}`,
      `${step.equation}\n${filledText(step)}`,
      step.symbols.map(symbolText).join('\n'),
      `${step.result.value}`,
      rangeText(step),
      step.footnote === null ? '' : `${step.footnote}`,
    ]),
  );
}

/** The equation of a step with the values put in, a line for each of its equations. */
function filledText({ equation, symbols, result }: WorkingStep): string {
  return putIn(readEquation(equation), symbols, result).map(writtenText).join('\n');
}

function symbolText({ symbol, value, says, step }: WorkingSymbol): string {
  return `${symbol} = ${value}, ${says}${step === null ? '' : ` (step ${step})`}`;
}

function rangeText({ source, range, here, inside }: WorkingStep): string {
  if (source === null) return 'a balance';
  return inside === null ? range : `${range}\n${here}, ${inside ? 'inside' : 'outside'}`;
}
