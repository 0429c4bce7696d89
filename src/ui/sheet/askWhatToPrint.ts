/** Heard by the dialog that asks, which comes after the first paint. */
export const printAsked = 'throughfin:print';

/** Asks what to print; prints the one page at once where nobody can ask yet. @param pages ticked beside those ticked last */
export function askWhatToPrint(pages: readonly string[] = []): void {
  const event = new CustomEvent(printAsked, { cancelable: true, detail: pages });
  if (window.dispatchEvent(event)) window.print();
}
