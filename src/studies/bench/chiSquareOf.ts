import { chiSquareTail } from '../../core/solve/chiSquareTail.ts';
import { tellsOfBox } from './readingsOf.ts';
import type { ChiSquare, Computed, Reading } from './types.ts';

/**
 * Deviations over the standard uncertainties of the instruments, squared and summed, against chance.
 * @param taken degrees of freedom that fitting has taken
 */
export function chiSquareOf(
  readings: readonly Reading[],
  computed: readonly Computed[],
  taken: number,
): ChiSquare {
  let value = 0;
  let count = 0;
  readings.forEach((reading, i) => {
    const there = computed[i]?.value ?? null;
    if (there === null || !tellsOfBox(reading)) return;
    value += ((2 * (reading.value - there)) / reading.within) ** 2;
    count++;
  });
  const degrees = Math.max(0, count - taken);
  return { value, degrees, chance: degrees > 0 ? chiSquareTail(value, degrees) : null };
}
