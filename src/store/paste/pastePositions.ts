import { type Columns, withUnit } from '../../io/columns.ts';
import { defaultPosition } from '../../model/defaults.ts';
import type { Design } from '../../model/design.ts';
import { rowLimits } from '../../model/fields.ts';
import { setAt } from '../../model/path.ts';
import { parseIn } from '../../model/say.ts';
import { without } from '../drafts.ts';
import { placed, typed } from '../edits.ts';
import type { Entered } from '../state.ts';
import { quoted } from './curveColumns.ts';
import { isTorn, type PositionColumn, positionTable } from './positionTable.ts';

/** A part, a resistance or a yes that cannot be taken: the whole table is refused. */
class Refused extends Error {}

/**
 * Lays a table over the row of resistors, from `row` on; the row grows as far as it must. With a head its names say what
 * the columns are and its units what bare numbers are in, without one the columns are taken by their number. Watts that
 * do not read keep their text, as if typed; anything else that does not read refuses the table, and the sentence says
 * where.
 */
export function pastePositions(state: Entered, row: number, columns: Columns): Partial<Entered> | string {
  const { head, meaning, body, lines } = positionTable(columns);
  if (body.length === 0) return 'There is no row below the head of this table.';
  if (!meaning.some((column) => column !== null))
    return `None of these columns is known: ${quoted(head?.map(({ written }) => written) ?? [])}. A head may name part, resistance, on, flip or watts.`;
  if (head === null && isTorn(columns))
    return 'Each line is one number with a decimal comma, or two numbers. Write decimal points, or part the cells by tabs or semicolons.';
  const { most } = rowLimits('positions');
  const length = Math.max(state.design.positions.length, row + body.length);
  if (length > most) return `That would make ${length} resistors; at most ${most} fit.`;

  const last = state.design.positions.at(-1) ?? defaultPosition;
  const positions = Array.from({ length }, (_, at) => state.design.positions[at] ?? last);
  let next: Entered = { ...state, design: { ...state.design, positions } };
  try {
    for (const [at, line] of body.entries()) {
      for (const [column, cell] of line.entries()) {
        const means = meaning[column];
        if (!means || cell === '') continue;
        const whole = withUnit(cell, head?.[column]?.unit ?? null);
        next = { ...next, ...takeCell(next, row + at, means, whole, lines[at] ?? at + 1) };
      }
    }
  } catch (refusal) {
    if (refusal instanceof Refused) return refusal.message;
    throw refusal;
  }
  return next;
}

function takeCell(
  state: Entered,
  row: number,
  column: PositionColumn,
  cell: string,
  line: number,
): Partial<Entered> {
  const place = `positions[${row}]`;
  switch (column) {
    case 'watts':
      return typed(state, `${place}.power_W`, cell);
    case 'on':
    case 'flipped':
      return placed(state, { [`${place}.${column}`]: yesOrNo(cell, line) });
    case 'part':
      return placed(state, { [`${place}.part`]: partCalled(state.design, cell, line) });
    case 'resistance':
      return withResistance(state, row, cell, line);
  }
}

function yesOrNo(cell: string, line: number): boolean {
  if (/^(?:yes|y|on|true|1|x|✓)$/i.test(cell)) return true;
  if (/^(?:no|n|off|false|0|-|–)$/i.test(cell)) return false;
  throw new Refused(`Line ${line}: “${cell}” is neither yes nor no.`);
}

function partCalled({ parts }: Design, cell: string, line: number): number {
  const wanted = cell.toLowerCase();
  const byName = parts.findIndex(({ name }) => name.trim().toLowerCase() === wanted);
  if (byName >= 0) return byName;
  const number = Number(cell);
  if (Number.isInteger(number) && number >= 1 && number <= parts.length) return number - 1;
  const known = parts.map(({ name }, at) => `${at + 1} “${name}”`).join(', ');
  throw new Refused(`Line ${line}: there is no part “${cell}”. There are ${known}.`);
}

/** The part with that resistance; where there is none, one like the row's own with that resistance is added. */
function withResistance(state: Entered, row: number, cell: string, line: number): Partial<Entered> {
  const { design } = state;
  const read = parseIn(cell, 'resistance', undefined, state.system);
  if (!read.ok) throw new Refused(`Line ${line}: “${cell}” is no resistance. ${read.reason}`);
  const same = design.parts.findIndex(({ R_Ohm }) => Math.abs(R_Ohm - read.value) <= 1e-9 * read.value);
  if (same >= 0) return placed(state, { [`positions[${row}].part`]: same });
  const { most } = rowLimits('parts');
  if (design.parts.length >= most)
    throw new Refused(`Line ${line}: a box has at most ${most} kinds of resistor.`);
  const like = design.parts[design.positions[row]?.part ?? 0] ?? design.parts[0];
  const name = /Ω|ohm/i.test(cell) ? cell : `${cell} Ω`;
  const added = { ...state, design: setAt(design, 'parts', [...design.parts, { ...like, name }]) };
  const at = design.parts.length;
  return {
    ...placed(added, { [`parts[${at}].R_Ohm`]: read.value, [`positions[${row}].part`]: at }),
    units: without(state.units, `parts[${at}]`),
  };
}
