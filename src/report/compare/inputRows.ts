import type { Design } from '../../model/design.ts';
import { fieldAt } from '../../model/fields.ts';
import type { Path } from '../../model/path.ts';
import { rowsOf } from '../../model/placeName.ts';
import { editIn, unitFor, unitSymbol } from '../../model/say.ts';
import { sayInput } from '../../model/sayInput.ts';
import { type Difference, differencesOf } from '../../studies/compare/differences.ts';
import { formParts } from '../everyInput.ts';
import type { UnitSystem } from '../types.ts';
import { capital, small } from '../words.ts';
import { alongCells, alongLabels, curveCells, rowCells, rowLabels } from './listCells.ts';

/** One input in which designs differ, a cell for each. */
export interface InputRow {
  readonly key: string;
  readonly label: string;
  readonly cells: readonly string[];
}

export function inputRows(designs: readonly Design[], system: UnitSystem): InputRow[] {
  return differencesOf(designs).map((difference) => inputRow(difference, designs, system));
}

function inputRow(difference: Difference, designs: readonly Design[], system: UnitSystem): InputRow {
  switch (difference.kind) {
    case 'value':
      return valueRow(difference, designs, system);
    case 'rows': {
      const { list } = difference;
      return { key: list, label: rowLabels[list], cells: rowCells(list, designs) };
    }
    case 'along': {
      const { key, columns } = difference;
      return {
        key: `positions.${key}`,
        label: alongLabels[key],
        cells: alongCells(key, columns, designs, system),
      };
    }
    case 'points': {
      const { path, curves } = difference;
      return { key: path, label: pointsLabel(path), cells: curveCells(path, curves, system) };
    }
  }
}

/** Longer texts are cut; they are remarks, and the first words tell which one it is. */
const mostLetters = 60;

function valueRow(
  { path, values }: Extract<Difference, { kind: 'value' }>,
  designs: readonly Design[],
  system: UnitSystem,
): InputRow {
  const said = values.map((value, i) => {
    const text = sayInput(path, value, system, { parts: designs[i]?.parts ?? [] });
    return text.length > mostLetters ? `${text.slice(0, mostLetters - 1).trimEnd()}…` : text;
  });
  const alike = new Set(said).size === 1;
  return { key: path, label: labelOf(path), cells: alike ? exactly(path, values, system, said) : said };
}

/** To the last digit, where the digits worth reading are alike. */
function exactly(
  path: Path,
  values: readonly unknown[],
  system: UnitSystem,
  said: readonly string[],
): readonly string[] {
  const field = fieldAt(path);
  if (field.kind !== 'quantity') return said;
  const unit = unitFor(field.dimension, system);
  return values.map((value) =>
    `${editIn(Number(value), field.dimension, unit)}\u202f${unitSymbol(field.dimension, unit)}`.trim(),
  );
}

const partTitles = new Map<string, string>(formParts);

/** With the part that it belongs to, unless its own name says that: "Baffle: slot width", "Fan supply". */
function labelOf(path: Path): string {
  const { label } = fieldAt(path);
  const [row] = rowsOf(path);
  if (row !== undefined) return `${capital(row)}: ${small(label)}`;
  // How many it is fitted to says already what of.
  if (path === 'fitted.readings') return label;
  const title = partTitles.get(path.slice(0, path.indexOf('.')));
  if (title === undefined) return label;
  const word = title.toLowerCase().replace(/s$/, '');
  return label.toLowerCase().includes(word) ? label : `${title}: ${small(label)}`;
}

function pointsLabel(path: Path): string {
  if (path === 'fan.curve') return 'Fan curve';
  const [row = ''] = rowsOf(path);
  return `${capital(row)}: ${path.endsWith('curve') ? 'curve' : 'measured points'}`;
}
