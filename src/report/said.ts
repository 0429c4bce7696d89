import type { Amount, Amounts, Said } from './amount.ts';
import { amount, type Dimension, quantity, type UnitSystem, unitOf } from './format.ts';
import type { Figure } from './types.ts';
import { percent, temperature, times } from './words.ts';
import type { FigureId } from './working/types.ts';

/** Texts of a row under their own names, and under `amounts` the numbers they were made from. */
export function withAmounts<K extends string>(
  row: Readonly<Record<K, Said>>,
): Readonly<Record<K, string>> & { readonly amounts: Amounts<K> } {
  const keys = Object.keys(row) as K[];
  const take = <T>(from: (said: Said) => T) =>
    Object.fromEntries(keys.map((key) => [key, from(row[key])])) as Record<K, T>;
  return { ...take(({ text }) => text), amounts: take(({ text: _, ...behind }) => behind) };
}

/** A number whose working can be opened. */
export function worked<T extends Amount>(said: T, figure: FigureId | null): T {
  return figure === null ? said : { ...said, figure };
}

/** @param value in SI, `null` where there is none */
export function amountOf(value: number | null, dimension: Dimension, system: UnitSystem): Amount {
  return {
    value: value === null ? null : amount(value, dimension, system),
    unit: unitOf(dimension, system),
  };
}

export function saidAs(text: string, value: number | null, dimension: Dimension, system: UnitSystem): Said {
  return { text, ...amountOf(value, dimension, system) };
}

export function saidQuantity(value: number, dimension: Dimension, system: UnitSystem, digits?: number): Said {
  return saidAs(quantity(value, dimension, system, digits), value, dimension, system);
}

export function saidTemperature(T_K: number, system: UnitSystem, decimals = 0): Said {
  return saidAs(temperature(T_K, system, decimals), T_K, 'temperature', system);
}

export function saidWatts(power_W: number, system: UnitSystem): Said {
  return saidQuantity(power_W, 'power', system, 3);
}

export function saidPercent(share: number): Said {
  return { text: percent(share), value: share * 100, unit: '%' };
}

export function saidTimes(factor: number): Said {
  return { text: times(factor), value: factor, unit: '×' };
}

export function figure(key: string, label: string, { text, ...behind }: Said): Figure {
  return { key, label, value: text, amount: behind };
}
