/** Where everything stands in one column; the style sheet of the page changes there too. */
const oneColumn = '(max-width: 55.99rem)';

/** On a narrow screen the reader is taken to the fields of the part just chosen; elsewhere they stand beside it. */
export function moveToFields(): void {
  if (!globalThis.matchMedia?.(oneColumn).matches) return;
  // Once the click is over, since it puts the focus where it fell.
  requestAnimationFrame(() => {
    const heading = document.getElementById('part-heading');
    heading?.scrollIntoView();
    heading?.focus({ preventScroll: true });
  });
}
