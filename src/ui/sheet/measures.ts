/** Millimetres on paper. The narrower page (A4) sets the width, the shorter one (US Letter) the height. */
export const sheetMeasures = { width: 190, plotWidth: 62, ladderWidth: 56 } as const;

/** Heights that give way where there are many words, in millimetres. */
export interface SheetSize {
  readonly drawing: number;
  readonly plot: number;
}

/** The roomiest first. The first that fits is taken; type shrinks only where the last does not fit. */
export const sheetSizes: readonly SheetSize[] = [
  { drawing: 70, plot: 42 },
  { drawing: 62, plot: 40 },
  { drawing: 56, plot: 38 },
  { drawing: 52, plot: 36 },
  { drawing: 50, plot: 34 },
  { drawing: 47, plot: 34 },
  { drawing: 44, plot: 34 },
  { drawing: 40, plot: 32 },
  { drawing: 36, plot: 30 },
  { drawing: 32, plot: 28 },
];

/** Lines that a page can hold of lists without an end. */
export const most = { notes: 3, parts: 3 } as const;
