import type { AssumptionKey } from '../../assumptions.ts';
import type { Constant } from '../../card.ts';

/**
 * An equation between the methods that is nobody's method: a sum, a difference, a share, a definition. It is told like a
 * card, with the same grammar of its equation, but has no source, no range and no scatter.
 *
 * A variable that ends in `#` may come any number of times, as `G_WPerK#1`, `G_WPerK#2` …; its symbol ends in `#` too.
 */
export interface Balance<V extends string = string> {
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  /** `variable` carries the SI unit of the result as its suffix. */
  readonly result: { readonly name: string; readonly variable: string; readonly symbol: string };
  readonly symbols: Readonly<Record<V, string>>;
  /** What a variable is, where its name does not say it. */
  readonly words?: Readonly<Partial<Record<V, string>>>;
  readonly constants?: readonly Constant[];
  readonly assumes?: readonly AssumptionKey[];
  readonly evaluate: (given: Readonly<Record<V, number>>) => number;
}

/** Types a balance and freezes it. */
export function defineBalance<V extends string>(balance: Balance<V>): Balance<V> {
  return Object.freeze(balance);
}

/** Values of a variable that comes any number of times, in order. */
export function each(given: Readonly<Record<string, number>>, variable: string): number[] {
  const values: number[] = [];
  for (let i = 1; `${variable}#${i}` in given; i++) values.push(given[`${variable}#${i}`] as number);
  return values;
}

/** Sum over the values of such a variable. */
export function total(given: Readonly<Record<string, number>>, variable: string): number {
  return each(given, variable).reduce((sum, value) => sum + value, 0);
}
