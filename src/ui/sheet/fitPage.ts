/**
 * Shrinks a sheet that is too long for one page, just before it prints; most need no shrinking. Measured off screen, in
 * the same millimetres that paper has. Self-contained, so that a test can hand it to a page as it is.
 */
export function fitPage(sheet: HTMLElement): void {
  // Height inside the margins of the shorter page, US Letter, less a hair for rounding.
  const pageHeight_mm = 262.5;
  const mmPerPx = 25.4 / 96;
  sheet.style.removeProperty('zoom');
  sheet.dataset.measured = '';
  const height_mm = sheet.getBoundingClientRect().height * mmPerPx;
  delete sheet.dataset.measured;
  const zoom = pageHeight_mm / height_mm;
  if (zoom < 1) sheet.style.setProperty('zoom', zoom.toFixed(4));
}
