import { type Path, patternOf } from '../model/path.ts';
import type { ByPath } from './drafts.ts';

/** Cells of a curve, and of a list of readings, share the unit that was last typed in their column; nobody writes it forty times. */
const columns = /(?:curve|points|^readings\.\w+)\[\d+\]\.\w+$/;

/** The unit that a bare number in this field is in, as far as its owner has shown; `undefined` where not. */
export function unitTyped(units: ByPath<string>, path: Path): string | undefined {
  return units[path] ?? (columns.test(path) ? units[columnOf(path)] : undefined);
}

export function rememberUnit(units: ByPath<string>, path: Path, unit: string): ByPath<string> {
  const isCell = columns.test(path);
  if (units[path] === unit && (!isCell || units[columnOf(path)] === unit)) return units;
  return isCell ? { ...units, [path]: unit, [columnOf(path)]: unit } : { ...units, [path]: unit };
}

/** Not a path, so that it stays where rows come and go. */
function columnOf(path: Path): string {
  return `each ${patternOf(path)}`;
}
