import type { MouseEvent } from 'react';

/** Id of the summary of a step in the working that is open. */
export const stepId = (number: number) => `working-step-${number}`;

/** Unfolds the step that a link names and goes there, without a trace in the address: that of the page may hold a design. */
export function goToStep(event: MouseEvent<HTMLAnchorElement>): void {
  event.preventDefault();
  const summary = document.getElementById(event.currentTarget.hash.slice(1));
  const fold = summary?.closest('details');
  if (fold) fold.open = true;
  summary?.scrollIntoView({ block: 'center' });
  summary?.focus({ preventScroll: true });
}
