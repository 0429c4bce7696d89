import type { Design } from '../../model/design.ts';
import { setAll } from '../../model/path.ts';
import type { BenchFitResult, Unknown } from './types.ts';

/** Where the design keeps each fitted value and its uncertainty. */
const places: Readonly<Record<Unknown, { readonly value: string; readonly within: string }>> = {
  bond: { value: 'fitted.bondFactor', within: 'fitted.bondWithin' },
  leak: { value: 'baffle.leakGap_m', within: 'fitted.leakWithin_m' },
  slot: { value: 'fitted.slotFactor', within: 'fitted.slotWithin' },
  fan: { value: 'fitted.fanFactor', within: 'fitted.fanWithin' },
  emissivity: { value: 'fitted.emissivityFactor', within: 'fitted.emissivityWithin' },
};

/** The most that the design can say of an uncertainty. */
const mostWithin = { relative: 10, leak_m: 0.05 };

/**
 * The design with what was fitted in place of what it had; values are absolute, so that fitting again multiplies nothing. What
 * was fitted before and is not fitted now stays. A refused fit changes nothing.
 */
export function fittedDesign(design: Design, fit: BenchFitResult): Design {
  if (fit.refused !== null) return design;
  const values: Record<string, unknown> = { 'fitted.readings': fit.readings.length };
  for (const { unknown, value, within } of fit.values) {
    const most = unknown === 'leak' ? mostWithin.leak_m : mostWithin.relative;
    values[places[unknown].value] = sixDigits(value);
    values[places[unknown].within] = sixDigits(Math.min(most, within));
  }
  return setAll(design, values);
}

/** More are no one’s measure, and make a file hard to read. */
function sixDigits(value: number): number {
  return Number(value.toPrecision(6));
}
