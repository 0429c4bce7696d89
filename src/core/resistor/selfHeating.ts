import { resistanceDrift } from './resistanceDrift.ts';

/** Temperature that coefficients of resistance are given from, by convention of the trade. */
export const reference_K = 298.15;

/** A resistance by its temperature, over its value at the reference. */
export function resistanceOver(T_K: number, linear_perK: number, square_perK2: number): number {
  return 1 + resistanceDrift(T_K - reference_K, linear_perK, square_perK2);
}

/** Relative change of a resistance from one temperature to another. */
export function selfHeatingDrift(
  from_K: number,
  to_K: number,
  linear_perK: number,
  square_perK2: number,
): number {
  return (
    resistanceOver(to_K, linear_perK, square_perK2) / resistanceOver(from_K, linear_perK, square_perK2) - 1
  );
}
