import { parseQuantityList } from '../units/parseQuantityList.ts';
import { fieldAt } from './fields.ts';
import type { Path } from './path.ts';
import { type UnitSystem, unitFor } from './say.ts';
import { allowed } from './wordIssue.ts';

export type ListRead =
  | { readonly ok: true /** In SI, rising, each once. */; readonly values: readonly number[] }
  | { readonly ok: false; readonly reason: string };

/** Closer than this share of the largest, two values are one. */
const same = 1e-9;

/**
 * A list of values for one input as typed, each inside the input's hard limits; or one sentence on what is wrong.
 * @param path of a quantity
 * @param unit in which a bare number is
 * @param most values that may come of it
 */
export function readList(
  path: Path,
  text: string,
  system: UnitSystem,
  { unit, most }: { readonly unit?: string | undefined; readonly most: number },
): ListRead {
  const field = fieldAt(path);
  if (field.kind !== 'quantity') throw new Error(`${path} is no quantity`);
  const { dimension, hard } = field;
  const read = parseQuantityList(text, dimension, unit ?? unitFor(dimension, system), most);
  if (!read.ok) return read;
  const [low, high] = hard;
  const outside = read.values.find(({ value }) => value < low || value > high);
  if (outside !== undefined)
    return { ok: false, reason: `Out of bounds. ${allowed(path, system, outside.unit)}` };
  const rising = read.values.map(({ value }) => value).sort((a, b) => a - b);
  const largest = rising.at(-1) ?? 0;
  return {
    ok: true,
    values: rising.filter((value, i) => i === 0 || value - (rising[i - 1] as number) > same * largest),
  };
}
