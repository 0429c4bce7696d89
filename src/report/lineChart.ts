/** Told apart by its dashes, not by colour. */
export type LineStyle = 'solid' | 'dashed' | 'dotted' | 'dashDot';

export interface LinePoint {
  readonly x: number;
  /** `null` leaves a gap: no answer there. */
  readonly y: number | null;
}

export interface Line {
  readonly key: string;
  readonly label: string;
  readonly style: LineStyle;
  readonly points: readonly LinePoint[];
}

/** A level that a line of the same style must not pass. */
export interface Level {
  readonly label: string;
  readonly y: number;
  readonly style: LineStyle;
}

export interface Mark {
  /** Empty where its level is named already. */
  readonly label: string;
  readonly x: number;
  readonly y: number;
}

/** Lines over one axis, in the display units named beside them. */
export interface LineChart {
  readonly id: string;
  readonly caption: string;
  readonly xLabel: string;
  readonly xUnit: string;
  readonly yUnit: string;
  readonly lines: readonly Line[];
  readonly levels: readonly Level[];
  readonly marks: readonly Mark[];
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly spoken: string;
}
