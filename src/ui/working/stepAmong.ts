const forward = ['ArrowRight', 'ArrowDown'];
const back = ['ArrowLeft', 'ArrowUp'];

/**
 * Where an arrow key leads from a number: the one before or after it in its list or table, up and down in its column.
 * The first of a list is a stop of the tab key, the others are reached from there.
 * @returns `null` at the end, and for any other key
 */
export function stepAmong(number: HTMLElement, key: string): HTMLElement | null {
  const step = forward.includes(key) ? 1 : back.includes(key) ? -1 : 0;
  if (step === 0) return null;
  const cell = number.closest('td');
  if (cell !== null && /Up|Down/.test(key)) return inColumn(cell, step);
  const all = [
    ...(number.closest('table, dl, ol, ul')?.querySelectorAll<HTMLElement>('button[data-figure]') ?? []),
  ];
  return all[all.indexOf(number) + step] ?? null;
}

/** The next number of the column, past cells without one. */
function inColumn(cell: HTMLTableCellElement, step: 1 | -1): HTMLElement | null {
  const rows = [...(cell.closest('table')?.rows ?? [])];
  const from = rows.findIndex((row) => row.contains(cell));
  for (let at = from + step; at >= 0 && at < rows.length; at += step) {
    const number = rows[at]?.cells[cell.cellIndex]?.querySelector<HTMLElement>('button[data-figure]');
    if (number) return number;
  }
  return null;
}
