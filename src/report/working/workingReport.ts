import { assumptions } from '../../core/assumptions.ts';
import { checkRange } from '../../core/card.ts';
import { driftOf } from '../../core/system/drift.ts';
import { fansStopped, ordinaryRun, type Run, type SystemInput } from '../../core/system/input.ts';
import { systemCards } from '../../core/system/methods.ts';
import type { Solved } from '../../core/system/outcome.ts';
import type { Step } from '../../core/system/working/book.ts';
import { cardsOf, type RatedTold, type Working, workingOf } from '../../core/system/working/working.ts';
import type { Design } from '../../model/design.ts';
import { toCore } from '../../model/toCore.ts';
import { fanStop } from '../../studies/fanStop.ts';
import { pulseSwing, type RatedLoad, ratedBound } from '../../studies/ratedLoad.ts';
import { type Bibliography, bibliographyOf } from '../bibliography.ts';
import type { UnitSystem } from '../format.ts';
import { hereText, rangeText, scatterText } from '../methodRows.ts';
import { verdictReport } from '../verdictReport.ts';
import { counted, percent } from '../words.ts';
import type { WorkingReport, WorkingStep } from './types.ts';
import { figureRows } from './workingFigures.ts';
import { placesText } from './workingPlaces.ts';
import { resultOf, symbolsOf } from './workingValues.ts';

/**
 * Every figure of a design down to the equations and numbers that it rests on, in words and in the reader's units. Footnotes
 * are those of the report of the same design.
 */
export function workingReport(design: Design, system: UnitSystem): WorkingReport {
  const input = toCore(design);
  const working = workingFor(input);
  const { steps, figures, running } = working;
  const used = new Set(cardsOf(steps));
  const bibliography = bibliographyOf([
    ...systemCards.filter((card) => used.has(card)).map((card) => card.source.key),
    ...(running.ok ? running.limits.map(({ source }) => source) : []),
  ]);
  const holdsForGood = (number: number) => {
    const record = steps[number - 1]?.record;
    return record?.kind === 'balance' && record.balance.id === 'stillHolds';
  };
  const rows = figureRows(figures, working, holdsForGood, system);
  return {
    sentence: sentenceOf(design, working, rows.length, used.size, system),
    figures: rows,
    steps: steps.map((step) => stepRow(step, bibliography, system)),
  };
}

/** With what studies find out besides the two answers. */
function workingFor(input: SystemInput): Working {
  const ratedOf = (run: Run, rated: RatedLoad | null, outcome: Working['running']): RatedTold | null => {
    if (!rated || !outcome.ok || rated.factor <= 0) return null;
    const bound = ratedBound(input, run, rated, pulseSwing(outcome));
    if (!bound) return null;
    const { limit, spare, swing } = bound;
    return { factor: rated.factor, total_W: rated.total_W, bound: limit, spare, swing };
  };
  return workingOf(input, (running, stopped) => {
    const stop = fanStop(input, running);
    const { timeline, reached } = stop;
    return {
      drift: running.ok ? driftOf(input) : null,
      stop: timeline ? { timeline, reached } : null,
      rated: {
        running: ratedOf(ordinaryRun, stop.running, running),
        stopped: ratedOf(fansStopped, stop.stopped, stopped),
      },
    };
  });
}

function stepRow(step: Step, bibliography: Bibliography, system: UnitSystem): WorkingStep {
  const { number, record, places } = step;
  const common = {
    number,
    where: placesText(places),
    symbols: symbolsOf(step, system),
    result: resultOf(step, system),
  };
  if (record.kind === 'balance') {
    const { title, equation, assumes = [] } = record.balance;
    return {
      ...common,
      card: null,
      title,
      equation,
      source: null,
      footnote: null,
      range: '',
      here: '',
      inside: null,
      scatter: '',
      assumes: assumptionsOf(assumes),
    };
  }
  const { card } = record;
  const source = bibliography.rowOf(card.source.key);
  const stands = Object.keys(card.range).flatMap((variable) => {
    const value = step.given[variable];
    return value === undefined ? [] : [{ card: card.id, variable, value }];
  });
  return {
    ...common,
    card: card.id,
    title: card.title,
    equation: card.equation,
    source: card.source.where === '' ? source.cite : `${source.cite}; ${card.source.where}`,
    footnote: source.number,
    range: rangeText(card, system),
    here: hereText(stands, system),
    inside: stands.length === 0 ? null : checkRange(card, step.given).length === 0,
    scatter: scatterText(card),
    assumes: assumptionsOf(card.assumes),
  };
}

function assumptionsOf(keys: readonly (keyof typeof assumptions)[]): WorkingStep['assumes'] {
  return keys.map((key) => ({ title: assumptions[key].says, text: assumptions[key].ifWrong }));
}

function sentenceOf(
  design: Design,
  { steps, running, stopped }: Working,
  figures: number,
  methods: number,
  system: UnitSystem,
): string {
  const told = running.ok ? running : stopped.ok ? stopped : null;
  if (!told)
    return `There is no answer, and so no working: ${verdictReport(design, running, system).sentence}`;
  const only = running.ok ? '' : ' Only the box without its fans has an answer.';
  const count = `${counted(figures, 'figure')} in ${counted(steps.length, 'step')}, by ${counted(methods, 'published method')} and the balances between them.`;
  return `${count}${only} Temperatures and flows were found together, ${roundsOf(told)}; the values put in are those of the settled answer, so a step may rest on a temperature that another one balances.`;
}

function roundsOf({ balance }: Solved): string {
  const closes = Math.max(balance.air, balance.heat);
  const size = closes < 1e-9 ? 'a thousand-millionth' : percent(closes);
  return `in ${counted(balance.iterations, 'round')}, until what goes in and what comes out agreed within ${size}`;
}
