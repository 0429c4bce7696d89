import type { SystemInput } from '../../core/system/input.ts';
import type { Computed, Unknown } from './types.ts';
import { fittedUnknowns } from './unknowns.ts';

/**
 * How every computed value moves with each unknown as it is fitted, by central differences; `null` where the design lacks the
 * unknown, nil where a value has no answer.
 */
export function slopesOf(
  box: SystemInput,
  unknowns: readonly Unknown[],
  compute: (box: SystemInput) => readonly Computed[],
): (number[] | null)[] {
  return unknowns.map((unknown) => {
    const { read, write, step, low, high } = fittedUnknowns[unknown];
    const at = read(box);
    if (at === null) return null;
    const up = Math.min(high, at + step);
    const down = Math.max(low, at - step);
    const above = compute(write(box, up));
    const below = compute(write(box, down));
    return above.map(({ value }, i) => {
      const other = below[i]?.value ?? null;
      return value === null || other === null ? 0 : (value - other) / (up - down);
    });
  });
}
