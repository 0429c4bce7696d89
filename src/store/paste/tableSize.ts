/** Rows by the hundred with any other columns beside them; what is longer is no table for a form, and is not read. */
const longestTable = 500_000;

/** Two bytes a letter, as in “Unicode text”. */
const largestFile_B = 2 * longestTable;

/** Whether what was pasted into one cell is a table, and not what one cell holds. */
export function isTable(text: string): boolean {
  return text.length > 1000 || /[\n\t;]/.test(text.trim());
}

/** Why this text is not even read; `null` where it is. */
export function tooLong({ length }: string): string | null {
  return length > longestTable ? `This text has ${inMillions(length)} million letters; ${most}` : null;
}

/** The same for a file, by what the file system tells. */
export function tooLarge({ size }: { readonly size: number }): string | null {
  return size > largestFile_B ? `This file has ${inMillions(size)} MB; ${most}` : null;
}

const most = 'it was not read, for a table here has some hundred rows. Keep the rows that matter.';

function inMillions(count: number): number {
  return Math.ceil(count / 100_000) / 10;
}
