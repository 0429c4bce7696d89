import type { MouseEvent } from 'react';

/** Id of the heading of a step in the working that is open. */
export const stepId = (number: number) => `working-step-${number}`;

/** Goes to the step that a link names, without a trace in the address: that of the page may hold a design. */
export function goToStep(event: MouseEvent<HTMLAnchorElement>): void {
  event.preventDefault();
  const heading = document.getElementById(event.currentTarget.hash.slice(1));
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}
