import type { Card } from '../../card.ts';
import type { Drift } from '../drift.ts';
import { fansStopped, ordinaryRun, type SystemInput } from '../input.ts';
import type { Limit, Outcome, Solved } from '../outcome.ts';
import { settleSystem } from '../solveSystem.ts';
import type { Reached, Timeline } from '../timeline.ts';
import type { Work } from '../work.ts';
import { spareLeft, wattsRated } from './balances/limitBalances.ts';
import {
  always,
  type Book,
  createBook,
  type Figure,
  noteFigure,
  type Quantity,
  type Step,
  settled,
} from './book.ts';
import { airPressure } from './tellAir.ts';
import { tellFans } from './tellFans.ts';
import { type Telling, telling } from './telling.ts';
import { tellLimits } from './tellLimits.ts';
import { type LoadTold, tellLoad } from './tellLoad.ts';
import { tellGrilles } from './tellLosses.ts';
import { tellPath } from './tellPath.ts';
import { tellTemperatures } from './tellTemperatures.ts';
import { tellDrift, tellMarch, tellPulse, tellReached } from './tellTime.ts';

/** A load found by search, and the limit that bounds it at the last solve. */
export interface RatedTold {
  readonly factor: number;
  readonly total_W: number;
  readonly bound: Limit;
  /** Asked for on every rise, 1 for a maker's own figure; swing of the films in pulses. */
  readonly spare: number;
  readonly swing: number;
}

/** What studies found out besides; a figure without it is not told. */
export interface Besides {
  readonly drift: Drift | null;
  readonly stop: { readonly timeline: Timeline; readonly reached: readonly Reached[] } | null;
  readonly rated: { readonly running: RatedTold | null; readonly stopped: RatedTold | null };
}

/** Steps of one answer in the order of computation, and the figures that they lead to. */
export interface Working {
  readonly steps: readonly Step[];
  readonly figures: readonly Figure[];
  /** With the fans running and at a stand. */
  readonly running: Outcome;
  readonly stopped: Outcome;
}

const nothingBesides: Besides = { drift: null, stop: null, rated: { running: null, stopped: null } };

/**
 * How every figure of a box was computed: each method and each balance with the values of the settled answer put in, with the
 * fans running and at a stand. Temperatures and flows were found together; where a step needs one of them it stands as
 * settled, and the step that shows how it balances comes elsewhere, so that no step builds upon itself.
 * @param study what takes further solves, asked once both answers are there
 */
export function workingOf(
  input: SystemInput,
  study: (running: Outcome, stopped: Outcome) => Besides = () => nothingBesides,
): Working {
  const book = createBook();
  const running = settleSystem(input, ordinaryRun);
  const stopped = settleSystem(input, fansStopped);
  const besides = study(running.outcome, stopped.outcome);
  if (running.outcome.ok) {
    const { t, load } = tellRun(book, running.work, running.outcome);
    if (besides.drift) tellDrift(t, besides.drift);
    const march = tellMarch(t, running.outcome.heat.hottest);
    if (besides.stop) tellReached(t, besides.stop.timeline, besides.stop.reached, march);
    if (besides.rated.running) tellRated(t, 'running', besides.rated.running, load.total_W);
  }
  if (stopped.outcome.ok) {
    const { t, load } = tellRun(book, stopped.work, stopped.outcome);
    if (besides.rated.stopped) tellRated(t, 'stopped', besides.rated.stopped, load.total_W);
  }
  return { steps: book.steps, figures: book.figures, running: running.outcome, stopped: stopped.outcome };
}

function tellRun(
  book: Book,
  work: Work,
  { air, heat, pulse, limits }: Solved,
): { t: Telling; load: LoadTold } {
  const t = telling(book, work);
  const pressure = airPressure(t);
  if (typeof pressure !== 'number') t.figure('airPressure', null, pressure);
  const load = tellLoad(t);
  const fans = work.path.fans ? tellFans(t, air) : null;
  tellGrilles(t);
  tellPath(t, air, heat, fans?.pressure_Pa ?? always(0));
  const temperatures = tellTemperatures(t, heat, load.power_W, fans?.power_W ?? always(0));
  const pulse_K = pulse ? tellPulse(t, pulse, temperatures.entering_K) : null;
  tellLimits(t, limits, { load, temperatures, pulse_K });
  return { t, load };
}

/** Watts on the label: the search in words, and what its last solve left of the first limit. */
function tellRated(t: Telling, key: string, rated: RatedTold, power_W: Quantity): void {
  const place = t.at('box');
  const left = t.balance(spareLeft, place, {
    loadFactor: settled(rated.bound.loadFactor ?? 1),
    spare: rated.spare,
    swing: settled(rated.swing),
  });
  const factor = settled(rated.factor);
  const total = t.balance(wattsRated, place, { factor, power_W }, rated.total_W);
  noteFigure(t.book, 'rated', key, false, total, [left]);
}

/** Cards of all steps, each once, in the order in which they come. */
export function cardsOf(steps: readonly Step[]): Card[] {
  return [...new Set(steps.flatMap(({ record }) => (record.kind === 'card' ? [record.card] : [])))];
}
