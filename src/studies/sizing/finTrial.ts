import type { Limit } from '../../core/system/outcome.ts';
import type { Design } from '../../model/design.ts';
import { type Values, withValues } from '../vary.ts';
import type { FinSet } from './finRules.ts';
import { sizersOf } from './sizers.ts';
import { type Solve, standingOf } from './standing.ts';
import type { Target } from './target.ts';

/** One set of fins at one supply of the fan, and what becomes of the box with it. */
export interface FinPoint {
  readonly count: number;
  readonly thickness_m: number;
  readonly gap_m: number;
  readonly height_m: number;
  readonly supply_V: number;
  /** Hottest film; mean over the pulses of a load that has any. */
  readonly film_K: number;
  readonly sound_dBA: number;
  readonly pressure_Pa: number;
  readonly flow_m3PerS: number;
  /** Kelvin left until the target is missed, negative where it is. */
  readonly left_K: number;
  /** The limit that leaves least. */
  readonly limit: Limit;
}

interface Height {
  readonly height_m: number;
  readonly supply_V: number;
}

/** What is put into a design for a set of fins; the fans are fed in the proportion they are fed now. */
export function finValues(design: Design, point: Pick<FinSet, 'count' | 'thickness_m'> & Height): Values {
  const fed = point.supply_V === design.fan.supply_V ? null : supplySizer(design);
  return {
    'sink.finCount': point.count,
    'sink.finThickness_m': point.thickness_m,
    'sink.finHeight_m': point.height_m,
    ...fed?.values(point.supply_V),
  };
}

/** @returns `null` where it cannot be built or has no answer */
export function tryFins(
  design: Design,
  target: Target,
  set: Pick<FinSet, 'count' | 'thickness_m' | 'gap_m'>,
  { height_m, supply_V }: Height,
  solve: Solve,
  swing: number,
): FinPoint | null {
  const { count, thickness_m, gap_m } = set;
  const values = finValues(design, { count, thickness_m, height_m, supply_V });
  const { left_K, judged, stop } = standingOf(withValues(design, values), target, solve, swing);
  if (left_K === null || judged === null || stop.why !== 'limit') return null;
  const { film_K, sound_dBA, fanPressure_Pa, flow_m3PerS } = judged.outputs;
  return {
    count,
    thickness_m,
    gap_m,
    height_m,
    supply_V,
    film_K,
    sound_dBA,
    pressure_Pa: fanPressure_Pa,
    flow_m3PerS,
    left_K,
    limit: stop.limit,
  };
}

const steps = 5;

/** Supplies to look at, from where the fan just starts to the present one, which is the last. */
export function suppliesOf_V(design: Design): number[] {
  const now = design.fan.supply_V;
  const low = supplySizer(design)?.low ?? now;
  if (!(low < now)) return [now];
  return Array.from({ length: steps + 1 }, (_, i) => (i === steps ? now : low + ((now - low) * i) / steps));
}

function supplySizer(design: Design) {
  return sizersOf(design).find(({ id }) => id === 'fanSupply') ?? null;
}
