import type { Limit, Outcome, Unsolved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { quantity } from './format.ts';
import { limitClause, limitNumber } from './limitRows.ts';
import type { UnitSystem, VerdictReport } from './types.ts';
import { limitParts, unsolvedWords, verdictWords } from './wording.ts';
import { capital, counted, plain0, resistorName, temperature, times } from './words.ts';

/** As many further reasons as still read as a list of reasons. */
const mostReasons = 3;

export function verdictReport(design: Design, outcome: Outcome, system: UnitSystem): VerdictReport {
  if (!outcome.ok) return noAnswer(outcome, system);
  const { state, limit } = outcome.verdict;
  const word = verdictWords[state];
  const nearest = state === 'holds' ? 'nearest to its limit, ' : '';
  const others = outcome.limits
    .filter((other) => other !== limit && other.state !== 'holds')
    .slice(0, mostReasons);
  return {
    state,
    word,
    sentence: `${capital(word)}: ${nearest}${limitClause(limit, design, system)}${fittedTo(design)}.`,
    number: limitNumber(limit, system),
    reasons: [
      ...whyLittle(limit, design, system),
      ...others.map((other) => `Also ${limitClause(other, design, system)}.`),
    ],
    part: limitParts[limit.key],
  };
}

/** An answer that rests on readings of a prototype says so. */
function fittedTo({ fitted: { readings } }: Design): string {
  return readings > 0 ? ` (fitted to ${counted(readings, 'reading')})` : '';
}

/** What makes a limit that is met count as met with little to spare. */
function whyLittle(limit: Limit, design: Design, system: UnitSystem): string[] {
  if (limit.state !== 'little') return [];
  const { spareFactor } = design.limits;
  if (
    limit.key === 'bond' &&
    limit.value > design.bond.glassTransition_K &&
    (limit.loadFactor ?? spareFactor) >= spareFactor
  ) {
    return [
      `It is above the adhesive’s glass transition of ${temperature(design.bond.glassTransition_K, system)}, where a bond softens and creeps.`,
    ];
  }
  if (limit.quantity !== 'temperature' || limit.loadFactor === null) return [];
  return [
    `The load could grow to ${times(limit.loadFactor)} before this limit; you asked for ${times(spareFactor)}.`,
  ];
}

function noAnswer(outcome: Unsolved, system: UnitSystem): VerdictReport {
  const words = unsolvedWords[outcome.reason];
  const fact = (key: string) => outcome.details[key];
  const says = words.says({
    volts: (key) => volts(fact(key), system),
    resistor: (key) => (fact(key) === undefined ? 'a resistor' : resistorName(fact(key) as number)),
    count: (key) => (fact(key) === undefined ? 'many' : plain0(fact(key) as number)),
  });
  return {
    state: 'noAnswer',
    word: verdictWords.noAnswer,
    sentence: `${capital(verdictWords.noAnswer)}: ${says}.`,
    number: null,
    reasons: [words.change],
    part: words.part,
  };
}

function volts(value: number | undefined, system: UnitSystem): string {
  return value === undefined ? 'too little' : quantity(value, 'voltage', system, 3);
}
