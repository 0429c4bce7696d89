import type { Design } from '../../model/design.ts';
import type { Path } from '../../model/path.ts';
import type { Points, PositionKey, RowList } from '../../studies/compare/differences.ts';
import { plain, quantity } from '../format.ts';
import type { UnitSystem } from '../types.ts';
import { counted, listed, watts } from '../words.ts';

export const rowLabels: Readonly<Record<RowList, string>> = {
  parts: 'Kinds of resistor',
  positions: 'Resistors along the row',
  moreFans: 'Other kinds of fan',
  extras: 'Extra losses',
};

/** How many rows a list has, and what they are called where they have names. */
export function rowCells(list: RowList, designs: readonly Design[]): string[] {
  return designs.map((design) => {
    if (list === 'positions') return plain(design.positions.length);
    const names = design[list].map(({ name }) => name).filter((name) => name !== '');
    if (design[list].length === 0) return 'none';
    return names.length === 0 || names.length > 4
      ? plain(design[list].length)
      : `${design[list].length}: ${listed(names)}`;
  });
}

export const alongLabels: Readonly<Record<PositionKey, string>> = {
  part: 'Kinds along the row',
  on: 'Resistors that are off',
  flipped: 'Resistors turned round',
  power_W: 'Watts given along the row',
};

/** One input of every resistor, a few words for a whole row of them. */
export function alongCells(
  key: PositionKey,
  columns: readonly (readonly unknown[])[],
  designs: readonly Design[],
  system: UnitSystem,
): string[] {
  const said = columns.map((column, i) => alongCell(key, column, designs[i]?.parts ?? [], system));
  return apart(said, columns, 'in another order');
}

function alongCell(
  key: PositionKey,
  column: readonly unknown[],
  parts: Design['parts'],
  system: UnitSystem,
): string {
  switch (key) {
    case 'on':
      return numbers(column, false);
    case 'flipped':
      return numbers(column, true);
    case 'part':
      return kinds(column as number[], parts);
    case 'power_W':
      return powers(column as number[], system);
  }
}

/** As many numbers of resistors as still read as a list. */
const mostNumbers = 8;

function numbers(column: readonly unknown[], wanted: boolean): string {
  const found = column.flatMap((value, index) => (value === wanted ? [`${index + 1}`] : []));
  if (found.length === 0) return 'none';
  if (found.length === column.length) return 'all';
  return found.length > mostNumbers ? `${found.length} of ${column.length}` : listed(found);
}

function kinds(column: readonly number[], parts: Design['parts']): string {
  const order = [...new Set(column)];
  const name = (part: number) => parts[part]?.name || `No. ${part + 1}`;
  return order.map((part) => `${column.filter((other) => other === part).length} × ${name(part)}`).join(', ');
}

function powers(column: readonly number[], system: UnitSystem): string {
  const [least, most] = [Math.min(...column), Math.max(...column)];
  const total = column.reduce((sum, power_W) => sum + power_W, 0);
  if (most - least <= 1e-6 * most) return `${watts(most, system)} each`;
  return `${watts(least, system)} to ${watts(most, system)}, ${watts(total, system)} in all`;
}

/** Both ends of each curve; where these are alike, that the points between are not. */
export function curveCells(path: Path, curves: readonly Points[], system: UnitSystem): string[] {
  const isFan = path.endsWith('curve');
  return apart(
    curves.map((points) => {
      const [first, last] = [points[0], points.at(-1)];
      if (first === undefined || last === undefined) return 'none';
      const flow = quantity(last.flow_m3PerS, 'volumeFlow', system, 3);
      const pressure = isFan ? first.dp_Pa : last.dp_Pa;
      const dp = quantity(pressure, 'pressure', system, 3);
      return `${isFan ? `${dp} to ${flow}` : `${dp} at ${flow}`}, ${counted(points.length, 'point')}`;
    }),
    curves,
    'other points between',
  );
}

/** A cell that says the same as the first, but of other values, says at least that. */
function apart(cells: readonly string[], columns: readonly (readonly unknown[])[], remark: string): string[] {
  const first = JSON.stringify(columns[0]);
  return cells.map((cell, i) =>
    cell === cells[0] && JSON.stringify(columns[i]) !== first ? `${cell}, ${remark}` : cell,
  );
}
