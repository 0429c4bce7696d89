import { airUnits } from './airUnits.ts';
import { electricalUnits } from './electricalUnits.ts';
import { geometryUnits } from './geometryUnits.ts';
import { heatUnits } from './heatUnits.ts';
import { invariant } from './invariant.ts';
import { plainUnits } from './plainUnits.ts';
import type { DimensionInfo, Unit } from './unit.ts';

export type { DimensionInfo, Unit };

const all = { ...geometryUnits, ...heatUnits, ...airUnits, ...electricalUnits, ...plainUnits };

export type Dimension = keyof typeof all;

/** How lengths and temperatures are shown where nobody typed anything. */
export type UnitSystem = 'metric' | 'inch';

/** Every kind of quantity, in the order in which a unit without a field is guessed. */
export const dimensions: Readonly<Record<Dimension, DimensionInfo>> = all;

export const dimensionNames = Object.keys(all) as readonly Dimension[];

/** @returns `null` where this quantity has no such unit, as in a draft of an older version */
export function findUnit(dimension: Dimension, key: string): Unit | null {
  return dimensions[dimension].units.find((unit) => unit.key === key) ?? null;
}

/** The unit with this key; one that does not exist is a programmer's mistake. */
export function unitOf(dimension: Dimension, key: string): Unit {
  const unit = findUnit(dimension, key);
  invariant(unit !== null, `${dimension} has no unit "${key}"`);
  return unit;
}
