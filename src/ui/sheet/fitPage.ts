/**
 * How much of one page is there for each of the sheet's: below 1 it is too long. Measured off screen, in the same
 * millimetres that paper has. Self-contained, so that a test can hand it to a page as it is.
 */
export function roomOnPage(sheet: HTMLElement): number {
  // Height inside the margins of the shorter page, US Letter, less a hair for rounding.
  const pageHeight_mm = 262.5;
  const mmPerPx = 25.4 / 96;
  sheet.style.removeProperty('zoom');
  sheet.dataset.measured = '';
  const height_mm = sheet.getBoundingClientRect().height * mmPerPx;
  delete sheet.dataset.measured;
  return pageHeight_mm / height_mm;
}

/** The last resort: everything smaller, type as well. */
export function shrink(sheet: HTMLElement, room: number): void {
  if (room < 1) sheet.style.setProperty('zoom', room.toFixed(4));
}
