import { counted } from './words.ts';

/** What became of a file of entries that was taken in. */
export function takenInWords(added: number, there: number): string {
  if (added === 0)
    return there === 0 ? 'The file has no entries.' : 'All of these entries are there already.';
  const taken = `${counted(added, 'entry', 'entries')} taken in`;
  return there === 0 ? `${taken}.` : `${taken}; ${counted(there, 'was', 'were')} there already.`;
}

/** Whether the reader's own entries outlast the page. */
export function keepingWords(keeping: 'unknown' | 'kept' | 'refused', unread: number): string {
  if (keeping === 'refused')
    return 'This browser keeps no entries here: yours last until the page is closed. Save them as a file.';
  const strange =
    unread === 0
      ? ''
      : ` ${counted(unread, 'entry', 'entries')} kept here cannot be read by this version and ${unread === 1 ? 'is' : 'are'} left alone.`;
  return `Your entries are kept in this browser only.${strange}`;
}
