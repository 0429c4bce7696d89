import { readNumber } from './cellNumbers.ts';

export type CsvCell = string | number | null;

/**
 * Lines of cells as RFC 4180 has them: every line ended by CR LF (§2.1), cells parted by commas with none after the last
 * (§2.4), quotes around what needs them (§2.6), a quote inside doubled (§2.7). Numbers have a dot and no groups; `null` is an
 * empty cell.
 */
export function writeCsv(lines: readonly (readonly CsvCell[])[]): string {
  return lines.map((cells) => `${cells.map(written).join(',')}\r\n`).join('');
}

function written(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const text = harmless(cell);
  return needsQuotes(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * Beyond what the standard asks, also where a reader who guesses the separator could take a semicolon or a tab for one, a
 * `#` for a comment, or would cut off blanks.
 */
function needsQuotes(text: string): boolean {
  return /[",;\t\r\n]|^#|^\s|\s$/.test(text);
}

/**
 * A spreadsheet runs a text that begins like a formula, and a design file may come from anywhere; an apostrophe in front
 * makes it text (OWASP ASVS 5.0, 1.2.10; the wide forms and line ends: common practice, no source). An en dash or a true
 * minus begins no formula, and a number stays a number.
 */
function harmless(text: string): string {
  return /^[=+\-@＝＋－＠\t\r\n\0]/.test(text) && readNumber(text, '.') === null && text !== '-'
    ? `'${text}`
    : text;
}
