/** Millimetres on paper. The narrower page (A4) sets the width, the shorter one (US Letter) the height. */
export const sheetMeasures = { width: 190, plotWidth: 62, ladderWidth: 56 } as const;

/** Heights that give way where there are many words, in millimetres. */
export interface SheetSize {
  readonly drawing: number;
  readonly plot: number;
  /** Lines that a page can hold of lists without an end: notes, and kinds of resistor or fan. */
  readonly notes: number;
  readonly parts: number;
}

/** The roomiest first. The first that fits is taken; type shrinks only where the last does not fit. */
export const sheetSizes: readonly SheetSize[] = [
  { drawing: 70, plot: 42, notes: 3, parts: 4 },
  { drawing: 62, plot: 40, notes: 3, parts: 4 },
  { drawing: 56, plot: 38, notes: 3, parts: 4 },
  { drawing: 52, plot: 36, notes: 3, parts: 4 },
  { drawing: 50, plot: 34, notes: 3, parts: 4 },
  { drawing: 47, plot: 34, notes: 3, parts: 4 },
  { drawing: 44, plot: 34, notes: 3, parts: 4 },
  { drawing: 40, plot: 32, notes: 3, parts: 4 },
  { drawing: 36, plot: 30, notes: 3, parts: 3 },
  { drawing: 32, plot: 28, notes: 2, parts: 2 },
  { drawing: 30, plot: 26, notes: 1, parts: 1 },
  { drawing: 27, plot: 25, notes: 1, parts: 1 },
];
