import type { Design } from '../../model/design.ts';
import type { Job } from '../job.ts';
import { does, type Edge } from './findEdge.ts';
import { sizeOne } from './sizeOne.ts';
import { sizersOf } from './sizers.ts';
import { standingOf, withPulses } from './standing.ts';
import type { Target } from './target.ts';

type Fan = Design['fan'];

/** A fan that the reader has entered somewhere, fed with its rated voltage; how many and how old they are is the design's matter. */
export type FanAtHand = Omit<Fan, 'sideBySide' | 'inARow' | 'inletSpace_m' | 'supplySag' | 'speedLoss'>;

export interface FanQuestion {
  readonly design: Design;
  readonly target: Target;
  /** One at least. */
  readonly fans: readonly FanAtHand[];
}

export interface FanTried {
  readonly fan: FanAtHand;
  /** Lowest supply with which the target is met. */
  readonly edge: Edge;
}

export interface FanChoice {
  /** Those that reach the target first, the smallest and then the quietest first; then the others, the nearest first. */
  readonly tried: readonly FanTried[];
  readonly reaching: number;
}

/** Each fan at hand in the place of the present ones, as many of it as there are of the first kind. */
export const fanChoiceJob: Job<FanQuestion, FanTried | null, FanChoice> = {
  count: ({ fans }) => Math.max(1, fans.length),
  piece: ({ design, target, fans }, index) => {
    const fan = fans[index];
    return fan === undefined ? null : { fan, edge: lowestSupply(withFan(design, fan), target) };
  },
  gather: (_, pieces) => {
    const tried = pieces.filter((piece) => piece !== null);
    const reaching = tried.filter(({ edge }) => edge.state !== 'out').sort(bySize);
    const others = tried.filter(({ edge }) => edge.state === 'out').sort(byNearness);
    return { tried: [...reaching, ...others], reaching: reaching.length };
  },
};

/** The design with this fan alone, at rated voltage. */
export function withFan(design: Design, fan: FanAtHand): Design {
  return { ...design, fan: { ...design.fan, ...fan, supply_V: fan.rated_V }, moreFans: [] };
}

function lowestSupply(design: Design, target: Target): Edge {
  const sizer = sizersOf(design).find(({ id }) => id === 'fanSupply');
  if (sizer) return sizeOne(design, target, sizer);
  // It starts at its rated voltage at best: there is nothing to choose.
  const here = standingOf(design, target, withPulses);
  return { state: does(here) ? 'free' : 'out', value: design.fan.supply_V, here };
}

function bySize(a: FanTried, b: FanTried): number {
  return a.fan.size_m - b.fan.size_m || soundOf(a) - soundOf(b);
}

function soundOf({ edge }: FanTried): number {
  return edge.here.judged?.outputs.sound_dBA ?? 0;
}

function byNearness(a: FanTried, b: FanTried): number {
  return leftOf(b) - leftOf(a);
}

function leftOf({ edge }: FanTried): number {
  return edge.here.left_K ?? Number.NEGATIVE_INFINITY;
}
