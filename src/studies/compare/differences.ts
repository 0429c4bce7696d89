import type { Design } from '../../model/design.ts';
import { type Field, fields } from '../../model/fields.ts';
import { getAt, type Path } from '../../model/path.ts';
import { isSame } from '../../model/shelf/standing.ts';

export type Points = Design['fan']['curve'];

/** One thing in which designs differ, a value for each design in their order. */
export type Difference =
  /** One input that all of them have. */
  | { readonly kind: 'value'; readonly path: Path; readonly values: readonly unknown[] }
  /** How many rows a list has. */
  | { readonly kind: 'rows'; readonly list: RowList; readonly counts: readonly number[] }
  /** One input of every resistor along the row. */
  | {
      readonly kind: 'along';
      readonly key: PositionKey;
      readonly columns: readonly (readonly unknown[])[];
    }
  /** A curve; its points are too many to be told one by one. */
  | { readonly kind: 'points'; readonly path: Path; readonly curves: readonly Points[] };

export type RowList = 'parts' | 'positions' | 'moreFans' | 'extras';
export type PositionKey = keyof Design['positions'][number];

/** What a design is called, and what was read on its prototype, is no difference between two boxes. */
const elsewhere = /^(title|variant)$|^readings\./;

/** Everything in which designs differ, in the order of the form. Dust from changes of unit is no difference. */
export function differencesOf(designs: readonly Design[]): Difference[] {
  const found: Difference[] = [];
  const lists = new Set<string>();
  for (const field of fields.filter(({ pattern }) => !elsewhere.test(pattern))) {
    const list = /^\w+(?=\[\])/.exec(field.pattern)?.[0];
    if (field.pattern.startsWith('fan.curve')) {
      if (!lists.has('fan.curve')) found.push(...pointsAt(designs, 'fan.curve'));
      lists.add('fan.curve');
    } else if (list === undefined) {
      found.push(...valueAt(designs, field.pattern));
    } else if (!lists.has(list)) {
      lists.add(list);
      found.push(...inList(designs, list as RowList));
    }
  }
  return found;
}

function valueAt(designs: readonly Design[], path: Path): Difference[] {
  const values = designs.map((design) => getAt(design, path));
  return allSame(values) ? [] : [{ kind: 'value', path, values }];
}

function pointsAt(designs: readonly Design[], path: Path): Difference[] {
  const curves = designs.map((design) => getAt(design, path) as Points);
  const same = allSame(curves.map(({ length }) => length)) && sameInside(curves.map(flat));
  return same ? [] : [{ kind: 'points', path, curves }];
}

function flat(points: Points): number[] {
  return points.flatMap(({ flow_m3PerS, dp_Pa }) => [flow_m3PerS, dp_Pa]);
}

function inList(designs: readonly Design[], list: RowList): Difference[] {
  const counts = designs.map((design) => design[list].length);
  const rows: Difference[] = allSame(counts) ? [] : [{ kind: 'rows', list, counts }];
  const inner = fields.filter(({ pattern }) => pattern.startsWith(`${list}[].`));
  if (list === 'positions') return [...rows, ...inner.flatMap((field) => alongRow(designs, field))];
  // Rows that only some of them have are told by their number alone.
  const shared = Array.from({ length: Math.min(...counts) }, (_, index) => `${list}[${index}]`);
  return [...rows, ...shared.flatMap((row) => inRow(designs, list, row, inner))];
}

function alongRow(designs: readonly Design[], { pattern }: Field): Difference[] {
  const key = pattern.slice('positions[].'.length) as PositionKey;
  const columns = designs.map(({ positions }) => positions.map((position) => position[key]));
  const isUniform = columns.every((column) => allSame(column));
  // A longer row of the same is told by its number.
  const same = isUniform
    ? allSame(columns.map(([first]) => first))
    : allSame(columns.map(({ length }) => length)) && sameInside(columns);
  return same ? [] : [{ kind: 'along', key, columns }];
}

function inRow(designs: readonly Design[], list: RowList, row: Path, inner: readonly Field[]): Difference[] {
  const keys = inner.map(({ pattern }) => pattern.slice(list.length + 3));
  const curve = keys.find((key) => key.includes('[]'))?.replace(/\[\].*$/, '');
  return [
    ...keys.filter((key) => !key.includes('[]')).flatMap((key) => valueAt(designs, `${row}.${key}`)),
    ...(curve === undefined ? [] : pointsAt(designs, `${row}.${curve}`)),
  ];
}

function sameInside(columns: readonly (readonly unknown[])[]): boolean {
  return (columns[0] ?? []).every((_, index) => allSame(columns.map((column) => column[index])));
}

function allSame(values: readonly unknown[]): boolean {
  return values.every((value) => value === values[0] || isSame(value, values[0]));
}
