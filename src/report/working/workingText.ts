import { wrap } from '../reportText.ts';
import type { FigureId, WorkedFigure, WorkingReport, WorkingStep, WorkingSymbol } from './types.ts';

const width = 90;

/** The working of one figure as plain text, to be pasted into a mail. @returns `null` for a figure that there is not */
export function workingText(report: WorkingReport, id: FigureId): string | null {
  const figure = report.figures.find((each) => each.id === id);
  if (!figure) return null;
  const byNumber = new Map(report.steps.map((step) => [step.number, step]));
  const steps = figure.steps.flatMap((number) => byNumber.get(number) ?? []);
  const places = new Map(steps.map(({ number }, i) => [number, i + 1]));
  return `${[headOf(figure), ...steps.map((step) => stepText(step, places)), sourcesOf(steps)]
    .filter((block) => block !== '')
    .join('\n\n')}\n`;
}

/** Every figure with its id and value, one a line. */
export function figuresText({ sentence, figures }: WorkingReport): string {
  const longest = figures.reduce((most, { id }) => Math.max(most, id.length), 0);
  const lines = figures.map(({ id, title, value }) => `${id.padEnd(longest)}  ${title}: ${value}`);
  return `${[wrap(sentence, width, ''), lines.join('\n')].join('\n\n')}\n`;
}

function headOf({ title, value, steps }: WorkedFigure): string {
  const head = `${title}: ${value}`;
  const note = `Steps are numbered in the order of computation (${steps.length} of them); “settled” values were found together with all other temperatures and flows.`;
  return `${head}\n${'='.repeat(head.length)}\n${wrap(note, width, '')}`;
}

/** Under the number of a step, long lines hanging. */
function indented(text: string): string {
  return `    ${wrap(text, width - 4, '        ')}`;
}

/** @param places numbers within this text of the steps of the report */
function stepText(step: WorkingStep, places: ReadonlyMap<number, number>): string {
  const where = step.where === '' ? '' : ` (${step.where})`;
  const footnote = step.footnote === null ? 'balance' : `source ${step.footnote}`;
  const range =
    step.inside === null
      ? ''
      : `\n${indented(`range: ${step.range}; here: ${step.here}${step.inside ? '' : ' – outside'}`)}`;
  const values = step.symbols.map((symbol) => `\n${indented(valueText(symbol, places))}`).join('');
  const { result } = step;
  const own = result.value === result.si ? '' : `, that is ${result.value}`;
  return `${places.get(step.number)}. ${step.title}${where} [${footnote}]\n    ${step.equation.replaceAll('; ', '\n    ')}${values}\n    → ${result.symbol} = ${result.si}${own}${range}`;
}

function valueText(
  { symbol, says, si, from, step }: WorkingSymbol,
  places: ReadonlyMap<number, number>,
): string {
  const origin =
    from === 'step'
      ? `step ${places.get(step ?? 0) ?? ''}`
      : from === 'input'
        ? 'typed in or from the drawing'
        : from;
  return `${symbol} = ${si}  ${says}, ${origin}`;
}

function sourcesOf(steps: readonly WorkingStep[]): string {
  const cited = new Map(
    steps.flatMap(({ footnote, source }) =>
      footnote === null || source === null ? [] : [[source, footnote]],
    ),
  );
  const lines = [...cited]
    .sort(([, a], [, b]) => a - b)
    .map(([source, footnote]) => wrap(`[${footnote}] ${source}`, width, '    '));
  return lines.length > 0 ? `Sources\n${lines.join('\n')}` : '';
}
