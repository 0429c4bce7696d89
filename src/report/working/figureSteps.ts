import type { FigureId, WorkedFigure, WorkingReport, WorkingStep } from './types.ts';

/** The steps that lead to a figure, numbered from 1 within it; the last gives the figure. */
export interface FigureSteps {
  readonly figure: WorkedFigure;
  readonly steps: readonly WorkingStep[];
}

/** @returns `null` for a figure that there is not */
export function figureSteps(report: WorkingReport, id: FigureId): FigureSteps | null {
  const figure = report.figures.find((each) => each.id === id);
  if (!figure) return null;
  const wanted = new Set(figure.steps);
  return { figure, steps: numbered(report.steps.filter(({ number }) => wanted.has(number))) };
}

/** Steps with the numbers that they have among themselves, in their links too; a link out of them is none. */
export function numbered(steps: readonly WorkingStep[]): WorkingStep[] {
  const places = new Map(steps.map(({ number }, i) => [number, i + 1]));
  return steps.map((step, i) => ({
    ...step,
    number: i + 1,
    symbols: step.symbols.map((symbol) => ({
      ...symbol,
      step: symbol.step === null ? null : (places.get(symbol.step) ?? null),
    })),
  }));
}
