import { fansStopped, ordinaryRun, type SystemInput } from '../core/system/input.ts';
import type { Outcome } from '../core/system/outcome.ts';
import { solveSystem } from '../core/system/solveSystem.ts';
import { afterFanStop, limitTimes, type Reached, type Timeline } from '../core/system/timeline.ts';
import { type RatedLoad, ratedLoad } from './ratedLoad.ts';

/** All there is to say about the day the fans stop. */
export interface FanStop {
  /** At the load as given, settled without fans. */
  readonly outcome: Outcome;
  /** Watts with fans and without. */
  readonly running: RatedLoad | null;
  readonly stopped: RatedLoad | null;
  /** From the running box on; `null` where that has no answer. */
  readonly timeline: Timeline | null;
  /** When each limit is reached after the stop, soonest first. */
  readonly reached: readonly Reached[];
}

export function fanStop(input: SystemInput): FanStop {
  const timeline = afterFanStop(input);
  return {
    outcome: solveSystem(input, fansStopped),
    running: ratedLoad(input, ordinaryRun),
    stopped: ratedLoad(input, fansStopped),
    timeline,
    reached: timeline ? limitTimes(timeline) : [],
  };
}
