/** What parts the cells of a table. A blank counts however many of them stand in a row. */
export type Separator = ';' | '\t' | ',' | ' ';

export interface CsvTable {
  readonly separator: Separator;
  readonly decimal: '.' | ',';
  readonly rows: readonly (readonly string[])[];
}

export type CsvResult =
  | { readonly ok: true; readonly table: CsvTable }
  | { readonly ok: false; readonly reason: string };

const candidates: readonly Separator[] = ['\t', ';', ',', ' '];

/**
 * Reads a table as people have it: separators `;` tab `,` or blanks, quotes, a byte order mark, decimal commas,
 * comment lines after `#`. The separator is the first one that parts every line into equally many cells, numbers where
 * the others have numbers; a comma is never taken for one where it would tear a decimal number apart.
 */
export function readCsv(text: string): CsvResult {
  const plain = text.startsWith('\ufeff') ? text.slice(1) : text;
  let best: { table: CsvTable; score: number } | null = null;
  let reason = 'No table found: there is no line with at least one cell.';
  for (const separator of candidates) {
    const read = splitCells(plain, separator);
    if (!read.ok) {
      reason = read.reason;
      continue;
    }
    const table: CsvTable = { separator, decimal: decimalOf(read.rows, separator), rows: read.rows };
    const score = judge(table);
    if (score > 0 && (best === null || score > best.score)) best = { table, score };
  }
  return best === null ? { ok: false, reason } : { ok: true, table: best.table };
}

/** Numbers in all lines but perhaps the first count most, then equal width, then more than one column. */
function judge({ rows, separator, decimal }: CsvTable): number {
  const first = rows[0];
  if (first === undefined) return 0;
  const body = rows.length > 1 ? rows.slice(1) : rows;
  const even = rows.every((row) => row.length === first.length);
  const several = first.length > 1;
  const numbers = body.every((row) => row.every((cell) => cell === '' || readNumber(cell, decimal) !== null));
  if (separator === ' ' && !numbers) return several ? 0.5 : 1;
  return 1 + (several ? 2 : 0) + (even ? 2 : 0) + (numbers && several ? 8 : 0);
}

type Cells =
  | { readonly ok: true; readonly rows: string[][] }
  | { readonly ok: false; readonly reason: string };

function splitCells(text: string, separator: Separator): Cells {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  let line = 1;
  const endRow = () => {
    if (row.some((cell) => cell !== '')) rows.push(row);
    row = [];
  };
  while (at < text.length) {
    if (row.length === 0 && text[at] === '#') {
      at = endOfLine(text, at);
    } else if (separator === ' ' && (text[at] === ' ' || text[at] === '\t')) {
      at++;
      continue;
    } else if (text[at] === '"') {
      const close = closingQuote(text, at);
      if (close < 0) return { ok: false, reason: `Line ${line}: a quote is opened and never closed.` };
      const cell = text.slice(at + 1, close);
      line += cell.split('\n').length - 1;
      row.push(cell.replaceAll('""', '"'));
      at = close + 1;
      while (text[at] === ' ' && separator !== ' ') at++;
      if (at < text.length && text[at] !== separator && !isLineEnd(text[at])) {
        return { ok: false, reason: `Line ${line}: text follows a closing quote.` };
      }
    } else {
      const from = at;
      while (
        at < text.length &&
        text[at] !== separator &&
        !isLineEnd(text[at]) &&
        !(separator === ' ' && text[at] === '\t')
      )
        at++;
      const cell = text.slice(from, at).trim();
      // A quoted cell that begins inside this one: another mark parts this table.
      if (/[;,\t]"/.test(cell)) return { ok: false, reason: `Line ${line}: a quote opens within a cell.` };
      if (cell !== '' || separator !== ' ') row.push(cell);
    }
    if (text[at] === separator) {
      at++;
      if (separator !== ' ' && (at >= text.length || isLineEnd(text[at]))) row.push('');
    }
    if (at >= text.length || isLineEnd(text[at])) {
      endRow();
      if (text[at] === '\r' && text[at + 1] === '\n') at++;
      at++;
      line++;
    }
  }
  endRow();
  return { ok: true, rows };
}

function isLineEnd(character: string | undefined): boolean {
  return character === '\n' || character === '\r';
}

function endOfLine(text: string, at: number): number {
  let here = at;
  while (here < text.length && !isLineEnd(text[here])) here++;
  return here;
}

function closingQuote(text: string, open: number): number {
  for (let at = text.indexOf('"', open + 1); at >= 0; at = text.indexOf('"', at + 2)) {
    if (text[at + 1] !== '"') return at;
  }
  return -1;
}

/** A decimal comma shows where commas stand inside numbers and do not part cells. */
function decimalOf(rows: readonly (readonly string[])[], separator: Separator): '.' | ',' {
  if (separator === ',') return '.';
  const cells = rows.flat();
  const withComma = cells.some((cell) => /^[+\-−]?[\d.\u202f ]*\d,\d+(?:[eE][+-]?\d+)?$/.test(cell));
  const withPoint = cells.some((cell) => /^[+\-−]?\d*\.\d+(?:[eE][+-]?\d+)?$/.test(cell));
  return withComma && !withPoint ? ',' : '.';
}

/** A cell as a number, `null` where it is none. Thousands may be parted by the other mark or a blank. */
export function readNumber(cell: string, decimal: '.' | ','): number | null {
  const thousands = decimal === ',' ? /[.\s\u202f](?=\d{3}(?:\D|$))/g : /[,\s\u202f](?=\d{3}(?:\D|$))/g;
  const text = cell.trim().replace('−', '-').replace(thousands, '').replace(decimal, '.');
  if (!/^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/.test(text)) return null;
  const value = Number(text);
  return Number.isFinite(value) ? value : null;
}
