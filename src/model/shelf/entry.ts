import type { SourceKey } from '../../core/sources.ts';
import type { KindId } from './kinds.ts';

/** A number with where it comes from and how far other samples and sources are from it. SI. */
export interface Cited {
  readonly value: number;
  readonly source: SourceKey;
  /** `null` where the number is a definition or a choice and does not scatter. */
  readonly scatter: readonly [low: number, high: number] | null;
}

/** One thing on the shelf, as it comes with the program. */
export interface ShelfEntry {
  readonly name: string;
  /** By the last keys of the inputs that it sets. */
  readonly values: Readonly<Record<string, Cited>>;
  /** Temperature where a solder begins to melt; a fact that no input takes. */
  readonly solidus?: Cited;
  /** What to mind; empty where there is nothing. */
  readonly note: string;
}

/** One thing that the reader put on the shelf. */
export interface OwnEntry {
  readonly id: string;
  readonly kind: KindId;
  readonly name: string;
  readonly values: Readonly<Record<string, number>>;
  readonly source: string;
  readonly remark: string;
}

export function cited(value: number, source: SourceKey, scatter: readonly [number, number] | null): Cited {
  return { value, source, scatter };
}

/** A temperature in °C, as sources give them. */
export function atCelsius(
  value_degC: number,
  source: SourceKey,
  scatter_degC: readonly [number, number] | null,
): Cited {
  const kelvin = (degC: number) => Number((degC + 273.15).toFixed(2));
  return cited(
    kelvin(value_degC),
    source,
    scatter_degC && [kelvin(scatter_degC[0]), kelvin(scatter_degC[1])],
  );
}
