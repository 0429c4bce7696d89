const key = 'throughfin-kept';

/** Whether an earlier visit has kept anything: known at once, before the store itself is open. */
export function mayHaveKept(): boolean {
  return attempt(() => localStorage.getItem(key)) === 'yes';
}

export function hintThatKept(): void {
  attempt(() => localStorage.setItem(key, 'yes'));
}

/** Storage may be forbidden altogether, and then throws at a touch. */
export function attempt<T>(touch: () => T): T | undefined {
  try {
    return touch();
  } catch {
    return undefined;
  }
}
