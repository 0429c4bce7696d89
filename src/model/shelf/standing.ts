import { getAt, type Path } from '../path.ts';
import { type KindId, kinds, pathsOf } from './kinds.ts';

/** An entry of either kind, by what counts: its name and its values in SI. */
export interface Named {
  readonly name: string;
  readonly values: Readonly<Record<string, number>>;
}

export type Standing =
  /** All values are those of these entries; `named`: the design's text names one of them, or there is no such text. */
  | { readonly how: 'as'; readonly names: readonly string[]; readonly named: boolean }
  /** The design's text names this entry, but these values differ. */
  | { readonly how: 'changed'; readonly name: string; readonly keys: readonly string[] }
  | { readonly how: 'other' };

/** Where the present values stand to the shelf. Nothing is remembered of a choice: values and names alone are compared. */
export function standingOf<T extends Named>(
  design: unknown,
  kind: KindId,
  place: Path,
  entries: readonly T[],
): Standing {
  const { name: nameAt } = kinds[kind];
  const paths = pathsOf(kind, place);
  const text = nameAt === null ? null : plain(String(getAt(design, nameAt)));
  const isNamed = ({ name }: Named) => text !== null && plain(name) === text;
  const offKeys = ({ values }: Named) =>
    paths.filter(([key, path]) => !isSame(values[key], getAt(design, path))).map(([key]) => key);

  const same = entries.filter((entry) => offKeys(entry).length === 0);
  const named = same.filter(isNamed);
  if (named.length > 0) return { how: 'as', names: names(named), named: true };
  const other = entries.find(isNamed);
  if (other !== undefined) return { how: 'changed', name: other.name, keys: offKeys(other) };
  if (same.length > 0) return { how: 'as', names: names(same), named: text === null };
  return { how: 'other' };
}

/** What choosing an entry writes, by path: its values, and its name where the design has a text for it. */
export function writesOf(kind: KindId, place: Path, entry: Named): Readonly<Record<Path, number | string>> {
  const { name } = kinds[kind];
  const numbers = pathsOf(kind, place).map(([key, path]) => [path, entry.values[key] as number] as const);
  return Object.fromEntries<number | string>(name === null ? numbers : [[name, entry.name], ...numbers]);
}

/** The present values of a kind's inputs, by their keys. */
export function presentValues(design: unknown, kind: KindId, place: Path): Readonly<Record<string, number>> {
  return Object.fromEntries(pathsOf(kind, place).map(([key, path]) => [key, getAt(design, path) as number]));
}

/** Typed digits and changes of unit leave dust; whoever types 0.1181102 in means 3 mm. */
export function isSame(a: unknown, b: unknown): boolean {
  return typeof a === 'number' && typeof b === 'number' && Math.abs(a - b) <= 1e-6 * Math.abs(b);
}

function names(entries: readonly Named[]): readonly string[] {
  return [...new Set(entries.map(({ name }) => name))];
}

function plain(text: string): string {
  return text.trim().replace(/\s+/g, ' ').toLowerCase();
}
