import type { Design } from '../../model/design.ts';
import { amount, unitOf } from '../format.ts';
import type { UnitSystem } from '../types.ts';
import { counted, fixed, listed } from '../words.ts';

const thin = '\u202f';

/** "0.83 ± 0.05": as many digits as the uncertainty has to say. */
export function withUncertainty(value: number, within: number): string {
  const decimals = decimalsOf(within);
  return `${fixed(value, decimals)}${thin}±${thin}${fixed(within, decimals)}`;
}

/** "0.51 ± 0.21 mm". */
export function lengthWithUncertainty(value_m: number, within_m: number, system: UnitSystem): string {
  const [value, within] = [value_m, within_m].map((each) => amount(each, 'length', system));
  return `${withUncertainty(value ?? 0, within ?? 0)}${thin}${unitOf('length', system)}`;
}

/** Two digits of what begins with 1 or 2, one of any other. */
function decimalsOf(within: number): number {
  if (!(within > 0)) return 2;
  const exponent = Math.floor(Math.log10(within));
  const leading = within / 10 ** exponent;
  return Math.min(4, Math.max(0, -exponent + (leading < 2.95 ? 1 : 0)));
}

/** What a design says of a fit to readings, one part a quantity; empty where nothing was fitted. */
export function fittedParts({ fitted, baffle }: Design, system: UnitSystem): string[] {
  const factors = [
    ['bond', fitted.bondFactor, fitted.bondWithin],
    ['slot', fitted.slotFactor, fitted.slotWithin],
    ['fan', fitted.fanFactor, fitted.fanWithin],
    ['emissivity', fitted.emissivityFactor, fitted.emissivityWithin],
  ] as const;
  const leak =
    fitted.leakWithin_m > 0 && baffle.fitted
      ? [`leak ${lengthWithUncertainty(baffle.leakGap_m, fitted.leakWithin_m, system)}`]
      : [];
  return [
    ...factors
      .filter(([, factor, within]) => within > 0 || factor !== 1)
      .map(([name, factor, within]) =>
        within > 0 ? `${name} ${withUncertainty(factor, within * factor)}` : `${name} ${fixed(factor, 2)}`,
      ),
    ...leak,
  ];
}

/** "This design is fitted to 12 readings: bond 0.83 ± 0.05 and leak 0.4 mm ± 0.1 mm." */
export function fittedSentence(design: Design, system: UnitSystem): string {
  const parts = fittedParts(design, system);
  const what = parts.length === 0 ? '' : `: ${listed(parts)}`;
  return `This design is fitted to ${counted(design.fitted.readings, 'reading')}${what}.`;
}
