/** A figure that has a working, as stable text: `film:3` (counted from 1), `flow`, `share:fins`, `stage:slot`, `limit:joint`. */
export type FigureId = string;

/** A value as the reader says it, and as the equation takes it. */
export interface WorkingValue {
  /** As it stands in the equation. */
  readonly symbol: string;
  /** What it is. */
  readonly says: string;
  /** In the reader's unit. */
  readonly value: string;
  /** Number and SI unit, with digits enough to work on with. */
  readonly si: string;
  readonly amount: number;
  readonly unit: string;
}

export interface WorkingSymbol extends WorkingValue {
  /** `settled`: found together with all other temperatures and flows, so that no single step made it. */
  readonly from: 'input' | 'constant' | 'step' | 'settled';
  /** Number of the step that made it; `null` unless one did. */
  readonly step: number | null;
}

/** One equation with the values put in. */
export interface WorkingStep {
  readonly number: number;
  /** Id of the method's card; `null` for a balance, which is nobody's method. */
  readonly card: string | null;
  readonly title: string;
  /** Where in the box; empty where there is only one place. */
  readonly where: string;
  readonly equation: string;
  readonly symbols: readonly WorkingSymbol[];
  readonly result: WorkingValue;
  /** Citation and place in it; `null` for a balance. */
  readonly source: string | null;
  readonly footnote: number | null;
  readonly range: string;
  /** Where this design stands in the range. */
  readonly here: string;
  /** `null` where no range was judged. */
  readonly inside: boolean | null;
  readonly scatter: string;
  readonly assumes: readonly { readonly title: string; readonly text: string }[];
}

export interface WorkedFigure {
  readonly id: FigureId;
  readonly title: string;
  readonly value: string;
  /** Numbers of steps in the order of computation; the last gives the figure. */
  readonly steps: readonly number[];
}

/** Every figure of an answer down to the equations and numbers that it rests on. */
export interface WorkingReport {
  readonly sentence: string;
  readonly figures: readonly WorkedFigure[];
  readonly steps: readonly WorkingStep[];
}
