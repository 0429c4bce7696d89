import { fansStopped, ordinaryRun, type SystemInput } from '../core/system/input.ts';
import type { Outcome } from '../core/system/outcome.ts';
import { solveSystem } from '../core/system/solveSystem.ts';
import { afterFanStop, limitTimes, type Reached, type Timeline } from '../core/system/timeline.ts';
import { type RatedLoad, ratedFrom, ratedLoad } from './ratedLoad.ts';

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

/** @param running the answer with fans, where it is there already */
export function fanStop(input: SystemInput, running: Outcome = solveSystem(input)): FanStop {
  const stopped = solveSystem(input, fansStopped);
  const timeline = afterFanStop(input);
  return {
    outcome: stopped,
    running: running.ok ? ratedFrom(running, input, ordinaryRun) : ratedLoad(input, ordinaryRun),
    stopped: stopped.ok ? ratedFrom(stopped, input, fansStopped) : ratedLoad(input, fansStopped),
    timeline,
    reached: timeline ? limitTimes(timeline) : [],
  };
}
