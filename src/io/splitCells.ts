/** What parts the cells of a table. A blank counts however many of them stand in a row. */
export type Separator = ';' | '\t' | '|' | ',' | ' ';

export interface Cells {
  readonly rows: readonly (readonly string[])[];
  /** Line of the text in which each row begins, from 1. */
  readonly lines: readonly number[];
}

export type CellsResult =
  | { readonly ok: true; readonly cells: Cells }
  | { readonly ok: false; readonly reason: string };

const quote = 34;
const newLine = 10;
const carriageReturn = 13;
const tab = 9;
const blank = 32;

/**
 * Cuts a text at one separator, in one pass: any line end, quotes as RFC 4180 has them (§2.5 to §2.7), lines of comment
 * left out, empty lines too.
 * @param most rows to read, where a look at the beginning is enough
 */
export function splitCells(text: string, separator: Separator, most = Number.POSITIVE_INFINITY): CellsResult {
  const rows: string[][] = [];
  const lines: number[] = [];
  const mark = separator.charCodeAt(0);
  const parts = (code: number) => code === mark || (mark === blank && code === tab);
  let at = 0;
  let line = 1;
  while (at < text.length && rows.length < most) {
    const began = line;
    const row: string[] = [];
    if (isComment(text, at, separator)) at = endOfLine(text, at);
    let isOpen = at < text.length && !isLineEnd(text.charCodeAt(at));
    while (isOpen) {
      const cell = text.charCodeAt(at) === quote ? quoted(text, at, separator) : bare(text, at, parts);
      if (typeof cell === 'string') return { ok: false, reason: `Line ${line}: ${cell}` };
      if (separator !== ' ' || cell.isQuoted || cell.text !== '') row.push(cell.text);
      line += cell.lineEnds;
      at = cell.end;
      isOpen = at < text.length && !isLineEnd(text.charCodeAt(at));
      if (!isOpen) break;
      at++;
      // A separator at the end of a line has an empty cell after it.
      if (at >= text.length || isLineEnd(text.charCodeAt(at))) {
        if (separator !== ' ') row.push('');
        isOpen = false;
      }
    }
    if (row.some((cell) => cell !== '')) {
      rows.push(row);
      lines.push(began);
    }
    if (text.charCodeAt(at) === carriageReturn && text.charCodeAt(at + 1) === newLine) at++;
    at++;
    line++;
  }
  return { ok: true, cells: { rows, lines } };
}

interface Cell {
  readonly text: string;
  /** Where the separator, the line end or the end of the text stands. */
  readonly end: number;
  readonly lineEnds: number;
  readonly isQuoted: boolean;
}

/** @returns what is wrong, in a string */
function quoted(text: string, at: number, separator: Separator): Cell | string {
  const close = closingQuote(text, at);
  if (close < 0) return 'a quote is opened and never closed.';
  let end = close + 1;
  while (separator !== ' ' && text.charCodeAt(end) === blank) end++;
  const isEnd = end >= text.length || isLineEnd(text.charCodeAt(end));
  const isParted = text[end] === separator || (separator === ' ' && text.charCodeAt(end) === tab);
  if (!isEnd && !isParted) return 'text follows a closing quote.';
  const inside = text.slice(at + 1, close);
  return {
    text: inside.replaceAll('""', '"'),
    end,
    lineEnds: inside.match(/\r\n|\r|\n/g)?.length ?? 0,
    isQuoted: true,
  };
}

/** @returns what is wrong, in a string */
function bare(text: string, at: number, parts: (code: number) => boolean): Cell | string {
  let end = at;
  for (; end < text.length; end++) {
    const code = text.charCodeAt(end);
    if (parts(code) || code === newLine || code === carriageReturn) break;
  }
  const cell = text.slice(at, end).trim();
  // A quoted cell that begins after blanks, or inside this one: then another mark parts this table.
  if (cell.includes('"') && (/^"/.test(cell) || /[;,\t|]"/.test(cell))) {
    const open = text.indexOf('"', at);
    return /^"/.test(cell) && open > at ? afterBlanks(text, open, parts) : 'a quote opens within a cell.';
  }
  return { text: cell, end, lineEnds: 0, isQuoted: false };
}

/** A quoted cell with blanks before its quote, as people write lists: `a, "b, c"`. */
function afterBlanks(text: string, open: number, parts: (code: number) => boolean): Cell | string {
  const separators: readonly Separator[] = ['\t', ';', '|', ','];
  const separator = separators.find((mark) => parts(mark.charCodeAt(0)));
  return separator === undefined ? 'a quote opens within a cell.' : quoted(text, open, separator);
}

/**
 * `#` and `//` begin a comment, a semicolon too where it parts no cells; a `#` with the separator right after it is the
 * head of a column of numbers. So does a line of dashes under the heads.
 */
function isComment(text: string, at: number, separator: Separator): boolean {
  const first = text[at];
  if (first === '#') return separator === ' ' || text[at + 1] !== separator;
  if (first === '/') return text[at + 1] === '/';
  if (first === ';') return separator !== ';';
  if (first === undefined || !'-=|+:'.includes(first)) return false;
  const line = text.slice(at, endOfLine(text, at));
  return /^[-=+|: \t]+$/.test(line) && /---|===/.test(line);
}

function isLineEnd(code: number): boolean {
  return code === newLine || code === carriageReturn;
}

function endOfLine(text: string, at: number): number {
  let here = at;
  while (here < text.length && !isLineEnd(text.charCodeAt(here))) here++;
  return here;
}

function closingQuote(text: string, open: number): number {
  for (let at = text.indexOf('"', open + 1); at >= 0; at = text.indexOf('"', at + 2)) {
    if (text[at + 1] !== '"') return at;
  }
  return -1;
}
