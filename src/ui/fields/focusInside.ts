/** Focuses a control, unfolding what it lies in. */
export function focusInside(control: HTMLElement): void {
  for (let fold = control.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null)
    fold.open = true;
  control.focus();
}
