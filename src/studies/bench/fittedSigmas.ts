import type { FittedSigmas } from '../../core/system/methodScatter.ts';
import type { Design } from '../../model/design.ts';
import type { Unknown } from './types.ts';
import { fittedUnknowns, sigmaOf } from './unknowns.ts';

/** What readings leave open of each factor that was fitted to them: in place of the scatter that its card states. */
export function fittedSigmas({ fitted }: Design): FittedSigmas {
  const withins: readonly (readonly [Unknown, number])[] = [
    ['bond', fitted.bondWithin],
    ['slot', fitted.slotWithin],
    ['fan', fitted.fanWithin],
    ['emissivity', fitted.emissivityWithin],
  ];
  return Object.fromEntries(
    withins.flatMap(([unknown, within]) => {
      const { factor } = fittedUnknowns[unknown];
      return within > 0 && factor ? [[factor, sigmaOf(unknown, within)]] : [];
    }),
  );
}
