/** Millimetres on paper. The narrower page (A4) sets the width, the shorter one (US Letter) the height. */
export const sheetMeasures = {
  width: 190,
  drawingHeight: 62,
  plotWidth: 60,
  plotHeight: 36,
} as const;

/** Lines that a page can hold of lists without an end. */
export const most = { notes: 3, parts: 4 } as const;
