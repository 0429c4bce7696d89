import type { Origin, Severity } from '../core/card.ts';
import type { Source } from '../core/sources.ts';
import type { LimitKey, PassageKind, RungKey, StageKey, Unsolved } from '../core/system/outcome.ts';
import type { PartId } from './drawing.ts';
import type { VerdictState } from './types.ts';

/** Every key of the core that a reader meets, worded once. The compiler asks for a word where a key is new. */

export const verdictWords: Readonly<Record<VerdictState, string>> = {
  holds: 'holds',
  little: 'holds with little to spare',
  fails: 'does not hold',
  noAnswer: 'no answer',
};

export const stateWords: Readonly<Record<Exclude<VerdictState, 'noAnswer'>, string>> = {
  holds: 'holds',
  little: 'little to spare',
  fails: 'does not hold',
};

export const limitLabels: Readonly<Record<LimitKey, string>> = {
  film: 'Film, hottest spot',
  pulse: 'Film in the pulse',
  derating: 'Derating line',
  joint: 'Solder joint',
  bond: 'Bond line',
  touch: 'Touchable metal',
  sheet: 'Plastic beside the sinks',
  wall: 'Outside of the box',
  exhaust: 'Exhaust air',
  sound: 'Sound',
  voltage: 'Element voltage',
  stall: 'Fan above its stall',
  ratedPower: 'Rated power',
};

export const limitParts: Readonly<Record<LimitKey, PartId>> = {
  film: 'resistors',
  pulse: 'load',
  derating: 'resistors',
  joint: 'secondFace',
  bond: 'bonds',
  touch: 'sinks',
  sheet: 'box',
  wall: 'box',
  exhaust: 'outlet',
  sound: 'fan',
  voltage: 'load',
  stall: 'fan',
  ratedPower: 'resistors',
};

export const passageLabels: Readonly<Record<PassageKind, string>> = {
  fins: 'through the fins',
  side: 'gaps at the sides',
  end: 'gaps at the ends',
  between: 'between the sinks, past the chips',
  leak: 'leak under the baffle',
};

export const stageLabels: Readonly<Record<StageKey, string>> = {
  guard: 'inlet guard',
  filter: 'filter',
  inletExtra: 'extra loss at the inlet',
  standingFan: 'fan, standing still',
  neck: 'neck-down',
  plenum: 'plenum',
  plenumExtra: 'extra loss in the plenum',
  slot: 'baffle slot and turn',
  bank: 'bank: fins and gaps',
  outlet: 'outlet',
  outletExtra: 'extra loss at the outlet',
};

export const stageParts: Readonly<Record<StageKey, PartId>> = {
  guard: 'guard',
  filter: 'filter',
  inletExtra: 'extras',
  standingFan: 'fan',
  neck: 'neck',
  plenum: 'plenum',
  plenumExtra: 'extras',
  slot: 'baffle',
  bank: 'sinks',
  outlet: 'outlet',
  outletExtra: 'extras',
};

export const rungLabels: Readonly<Record<RungKey, string>> = {
  fanHeat: 'fan’s own heat',
  airRise: 'air warming up',
  finToAir: 'fins to air',
  spreading: 'spreading in the plate',
  bond: 'bond line',
  coating: 'coating and chip',
};

/** The same as the end of a sentence: "the largest step is …". */
export const rungPhrases: Readonly<Record<RungKey, string>> = {
  fanHeat: 'the fan’s own heat',
  airRise: 'the air warming up',
  finToAir: 'from the fins to the air',
  spreading: 'the spreading in the plate',
  bond: 'the bond line',
  coating: 'through coating and chip',
};

export const severityWords: Readonly<Record<Severity, string>> = {
  info: 'For information',
  caution: 'Caution',
  beyond: 'Beyond the proven range',
};

export const originWords: Readonly<Record<Origin, string>> = {
  source: 'as the source states',
  textbook: 'as a textbook states',
  computed: 'from an independent computation',
  memory: 'from memory',
  'common practice': 'common practice, no source',
  'not stated': 'not stated',
};

export const standingWords: Readonly<Record<Source['standing'], string>> = {
  read: 'passage read',
  through: 'seen through a public re-computation',
  memory: 'from memory',
  computed: 'own independent computation',
  practice: 'common practice, no source',
};

/** Why physics gives no answer, and what to change. */
export const unsolvedWords: Readonly<
  Record<
    Unsolved['reason'],
    { readonly says: (said: UnsolvedFacts) => string; readonly change: string; readonly part: PartId }
  >
> = {
  fanDoesNotStart: {
    says: ({ volts }) => `the fan gets ${volts('supply_V')} and needs ${volts('start_V')} to start`,
    change: 'Raise the fan supply, or enter the start voltage that this fan really has.',
    part: 'fan',
  },
  noOperatingPoint: {
    says: () => 'the fan curve and this box never meet',
    change: 'See that the fan curve falls to no pressure at its end, and that nothing shuts the air’s way.',
    part: 'fan',
  },
  noHeatPath: {
    says: ({ resistor }) => `${resistor('position')} carries watts but has no way to a sink`,
    change: 'Fit the sink beside it, bond its second face or turn it round.',
    part: 'resistors',
  },
  runaway: {
    says: () => 'the temperatures run away far beyond anything a fan box bears',
    change: 'Lower the watts, or give the sinks more air.',
    part: 'load',
  },
  notConverged: {
    says: ({ count }) => `air and heat did not settle within ${count('iterations')} rounds`,
    change:
      'Keep the file as evidence of a fault in this program; a slightly different value will most likely settle.',
    part: 'box',
  },
};

export interface UnsolvedFacts {
  readonly volts: (key: string) => string;
  readonly resistor: (key: string) => string;
  readonly count: (key: string) => string;
}
