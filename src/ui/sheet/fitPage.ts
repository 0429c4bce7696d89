/**
 * How much of one page is there for each of the sheet's: below 1 it is too long. Measured off screen, in the same
 * millimetres that paper has. Self-contained, so that a test can hand it to a page as it is.
 */
export function roomOnPage(sheet: HTMLElement): number {
  // Height inside the margins of the shorter page, US Letter, less a hair for rounding.
  const pageHeight_mm = 262.5;
  const mmPerPx = 25.4 / 96;
  sheet.dataset.measured = '';
  const height_mm = sheet.getBoundingClientRect().height * mmPerPx;
  delete sheet.dataset.measured;
  return pageHeight_mm / height_mm;
}

/**
 * The last resort: everything smaller, type as well. Lines break anew in smaller type, so it may take several steps.
 * @param room as `roomOnPage` tells, handed over so that both are self-contained
 */
export function shrink(sheet: HTMLElement, room: (sheet: HTMLElement) => number): void {
  let zoom = 1;
  sheet.style.removeProperty('zoom');
  for (let step = 0; step < 6; step++) {
    const left = room(sheet);
    if (left >= 1) return;
    zoom *= Math.min(left, 0.998);
    sheet.style.setProperty('zoom', zoom.toFixed(4));
  }
}
