/** Characters that no text has: those below the blank but for tab, line ends and form feed, and the mark of a lost one. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const noText = /[\0-\x08\x0e-\x1f\x7f\ufffd]/;

/** Why a text is no table, in words; `null` where it may be one. */
export function noTable(text: string): string | null {
  if (/^[\s\ufeff]*$/.test(text)) return 'There is nothing in it.';
  const start = text.slice(0, 400).replace(/^[\s\ufeff]+/, '');
  if (/^<(?:[a-z!?/])/i.test(start))
    return 'This is a web page or another marked-up file. Copy the table from the page as it is shown.';
  if (start.startsWith('{'))
    return 'This is a file of a program and no table; designs are opened under “Designs…”.';
  const at = text.search(noText);
  return at < 0 ? null : `Line ${lineAt(text, at)}: a character that is no text.`;
}

/** Number of the line in which a character stands, from 1. */
function lineAt(text: string, at: number): number {
  return text.slice(0, at).split(/\r\n|\r|\n/).length;
}
