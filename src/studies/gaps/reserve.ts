import type { Limit, LimitState, Solved } from '../../core/system/outcome.ts';
import { pulseSwing } from '../ratedLoad.ts';

/**
 * How far a verdict is from its next worse one, as a share of the load or of the limit: a number that passes through nil
 * where the verdict changes, so that a line can be drawn there. Negative: it is the worse one already.
 */
export interface Reserve {
  /** To "does not hold". */
  readonly toFail: number;
  /** To "holds with little to spare"; never more than `toFail`. */
  readonly toLittle: number;
}

/** Beyond this nobody tells reserves apart. */
const most = 99;

export interface Thresholds {
  readonly spareFactor: number;
  readonly glassTransition_K: number;
}

/**
 * The least reserve of all limits.
 * @param swing of films in pulses (`pulseSwing`), where the outcome was found without following them
 */
export function reserveOf(solved: Solved, thresholds: Thresholds, swing = pulseSwing(solved)): Reserve {
  let toFail = most;
  let toLittle = most;
  for (const limit of solved.limits) {
    const load =
      limit.key === 'film' && limit.loadFactor !== null ? limit.loadFactor / swing : limit.loadFactor;
    const one = limitReserve(limit, load, solved, thresholds);
    toFail = Math.min(toFail, one.toFail);
    toLittle = Math.min(toLittle, one.toLittle, one.toFail);
  }
  return { toFail, toLittle };
}

export function stateOfReserve({ toFail, toLittle }: Reserve): LimitState {
  return toFail < 0 ? 'fails' : toLittle < 0 ? 'little' : 'holds';
}

function limitReserve(
  limit: Limit,
  loadFactor: number | null,
  solved: Solved,
  { spareFactor, glassTransition_K }: Thresholds,
): Reserve {
  switch (limit.quantity) {
    case 'temperature': {
      if (loadFactor === null) return only(limit.state === 'fails' ? -1 : most);
      const soft = limit.key === 'bond' ? (glassTransition_K - limit.value) / 100 : most;
      return { toFail: loadFactor - 1, toLittle: Math.min(loadFactor / spareFactor - 1, soft) };
    }
    case 'power':
      return only((loadFactor ?? most) - 1 + 1e-12);
    case 'voltage': {
      const share = limit.value / limit.limit;
      return { toFail: 1 - share, toLittle: 0.95 - share };
    }
    case 'sound': {
      const left_dB = limit.limit - limit.value;
      return { toFail: left_dB / 10, toLittle: (left_dB - 1) / 10 };
    }
    case 'flow': {
      const several = solved.air.intersections.filter(({ stable }) => stable).length > 1;
      const above = limit.value / (1.1 * limit.limit) - 1;
      return { toFail: most, toLittle: several ? Math.min(above, -0.05) : above };
    }
  }
}

/** A limit with nothing between holding and failing. */
function only(reserve: number): Reserve {
  return { toFail: reserve, toLittle: reserve };
}
