import { type Measured, type PageOfTables, paginate } from './paginate.ts';

/** Widths of columns in millimetres, one list a table: a piece of a table keeps those of the whole. */
export type Widths = readonly (readonly number[])[];

export interface LaidOut {
  readonly pages: readonly PageOfTables[];
  readonly widths: Widths;
}

const mmPerPx = 25.4 / 96;
/** Width of the page, and of one of two columns. */
const wide_mm = 190;
const narrow_mm = 92;
/** Height of US Letter inside the margins, less the head of a page with its longest words, and a hair for rounding. */
const room_mm = 262.5 - 19;

/** Measures the tables of a galley, which hold all their rows, and breaks them into pages. */
export function layOut(galley: HTMLElement): LaidOut {
  galley.dataset.measured = '';
  const tables = [...galley.querySelectorAll('table')];
  const narrow = new Set(tables.filter(isNarrow));
  for (const table of tables) table.style.inlineSize = `${narrow.has(table) ? narrow_mm : wide_mm}mm`;
  const measured = tables.map((table) => measure(table, !narrow.has(table)));
  const widths = tables.map((table) =>
    [...(table.tHead?.rows[0]?.cells ?? [])].map((cell) => sizeOf(cell).width),
  );
  delete galley.dataset.measured;
  return { pages: paginate(measured, room_mm), widths };
}

function isNarrow(table: HTMLTableElement): boolean {
  table.style.inlineSize = 'max-content';
  return sizeOf(table).width <= narrow_mm;
}

function measure(table: HTMLTableElement, wide: boolean): Measured {
  const rows = [...(table.tBodies[0]?.rows ?? [])].map((row) => sizeOf(row).height);
  const all = rows.reduce((sum, height) => sum + height, 0);
  return { head: sizeOf(table).height - all, rows, wide };
}

function sizeOf(element: Element): { readonly width: number; readonly height: number } {
  const { width, height } = element.getBoundingClientRect();
  return { width: width * mmPerPx, height: height * mmPerPx };
}
