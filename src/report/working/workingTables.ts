import { table } from '../makeTable.ts';
import type { TextTable } from '../types.ts';
import { putIn } from './equation/putIn.ts';
import { readEquation } from './equation/readEquation.ts';
import { writtenText } from './equation/writtenText.ts';
import { numbered } from './figureSteps.ts';
import type { FigureId, WorkedFigure, WorkingReport, WorkingStep, WorkingSymbol } from './types.ts';

/** Of a figure that takes more steps than this, paper gets the last few alone. */
const longest = 100;
const few = 3;

/** These figures with the steps that lead to them, for paper. Figures without a working are left out. */
export function workingTables(report: WorkingReport, wanted: readonly FigureId[]): TextTable[] {
  const { figures, steps } = printed(report, wanted);
  return [figuresTable(figures, steps), stepsTable(numbered(steps))].filter(({ rows }) => rows.length > 0);
}

/** Number on paper of the step that gives each figure, by the figure's id. */
export function lastSteps(report: WorkingReport, wanted: readonly FigureId[]): ReadonlyMap<FigureId, number> {
  const { figures, steps } = printed(report, wanted);
  const places = placesOf(steps);
  return new Map(figures.map(({ id, steps: own }) => [id, places.get(own.at(-1) ?? 0) ?? 0]));
}

interface Printed {
  readonly figures: readonly WorkedFigure[];
  readonly steps: readonly WorkingStep[];
}

function printed(report: WorkingReport, wanted: readonly FigureId[]): Printed {
  const figures = report.figures.filter(({ id, steps }) => wanted.includes(id) && steps.length > 0);
  const used = new Set(figures.flatMap(({ steps }) => (steps.length > longest ? steps.slice(-few) : steps)));
  return { figures, steps: report.steps.filter(({ number }) => used.has(number)) };
}

const placesOf = (steps: readonly WorkingStep[]) => new Map(steps.map(({ number }, i) => [number, i + 1]));

function figuresTable(figures: readonly WorkedFigure[], printedSteps: readonly WorkingStep[]): TextTable {
  const places = placesOf(printedSteps);
  return table(
    'workedFigures',
    'Figures of the summary and the steps that lead to them',
    ['Figure', '>Value', 'Steps'],
    figures.map(({ title, value, steps }) => {
      const here = steps.flatMap((number) => places.get(number) ?? []);
      const more = steps.length - here.length;
      return [title, value, more > 0 ? `${runs(here)}; ${more} more on the screen` : runs(here)];
    }),
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
      '>Source',
    ],
    steps.map((step) => [
      `${step.number}`,
      whatText(step),
      `${step.equation}\n${filledText(step)}`,
      step.symbols.map(symbolText).join('; '),
      `${step.result.value}`,
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

function whatText({ title, where, inside, here }: WorkingStep): string {
  const outside = inside === false ? `outside its range: ${here}` : '';
  return [title, where, outside].filter((part) => part !== '').join(', ');
}
