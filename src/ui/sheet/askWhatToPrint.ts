/** Heard by the dialog that asks, which comes after the first paint. */
export const printAsked = 'throughfin:print';

/** Asks what to print; prints the one page at once where nobody can ask yet. */
export function askWhatToPrint(): void {
  if (window.dispatchEvent(new Event(printAsked, { cancelable: true }))) window.print();
}
