import type { Problem, ProblemCode, ProblemData } from './problem.ts';
import { sayQuantity, type UnitSystem } from './say.ts';

interface Say {
  readonly length: (value_m: number) => string;
  readonly flow: (value_m3PerS: number) => string;
  readonly pressure: (value_Pa: number) => string;
  readonly temperature: (value_K: number) => string;
}

type Words = { readonly [C in ProblemCode]: (data: ProblemData[C], say: Say) => string };

/** What is wrong, then what is allowed. One sentence or two for every code; nobody else words them. */
const words: Words = {
  bankTooLong: ({ needed_m, available_m }, say) =>
    `The row needs ${say.length(needed_m)} with its end clearances, and the box is ${say.length(available_m)} long inside. Make the box longer, or the row shorter.`,
  bankTooWide: ({ needed_m, available_m }, say) =>
    `The sinks need ${say.length(needed_m)} with their side clearances, and the box is ${say.length(available_m)} wide inside. Make the box wider, or the sinks narrower.`,
  endClearanceTooWide: ({ most_m }, say) =>
    `Beyond the ends of the row the box leaves ${say.length(most_m)} on each side at most.`,
  sideClearanceTooWide: ({ most_m }, say) =>
    `Beside the sinks the box leaves ${say.length(most_m)} on each side at most.`,
  finsTooMany: ({ most, smallest_m }, say) =>
    `So many fins leave no gap between them. At this width and thickness at most ${most} fins fit, ${say.length(smallest_m)} apart.`,
  finsTooThick: ({ most_m }, say) =>
    `Even two fins fill the whole sink. At this width a fin is at most ${say.length(most_m)} thick.`,
  slotTooWide: ({ most_m }, say) => `The slot is wider than the box inside. At most ${say.length(most_m)}.`,
  collarTooHigh: ({ most_m }, say) =>
    `The collar reaches beyond the fins. At most their length, ${say.length(most_m)}.`,
  chipTooLong: ({ most_m }, say) =>
    `The chip is longer than the sink is wide. At most ${say.length(most_m)} here.`,
  chipTooWide: ({ most_m }, say) =>
    `The chip is wider than the fins are long. At most ${say.length(most_m)} here.`,
  deratingReversed: ({ fullPowerUpTo_K }, say) =>
    `The derating line must fall: this has to lie above the temperature for full power, ${say.temperature(fullPowerUpTo_K)}.`,
  filamentTooLong: ({ most_m }, say) =>
    `So much filament does not fit under the smallest chip. At most ${say.length(most_m)} of this diameter.`,
  tabsTooWide: ({ most_m, beside }, say) =>
    beside === 1
      ? `A tab is wider than the smallest chip it is soldered to. At most ${say.length(most_m)}.`
      : `${beside} tabs beside each other are wider than the smallest chip they are soldered to. At most ${say.length(most_m)} each.`,
  terminalTooLong: ({ most_m }, say) =>
    `The two terminals would meet on the smallest chip. At most ${say.length(most_m)} each.`,
  landingTooLarge: ({ most_m }, say) =>
    `The tabs cover more than the whole plate of a sink. At most ${say.length(most_m)} each.`,
  hubTooLarge: ({ opening_m }, say) => `The hub must be smaller than the opening, ${say.length(opening_m)}.`,
  openingTooLarge: ({ size_m }, say) =>
    `The opening is larger than the frame. At most ${say.length(size_m)}.`,
  partMissing: ({ parts }) =>
    parts === 1
      ? 'This part does not exist; there is one part.'
      : `This part does not exist; there are ${parts} parts.`,
  flowNotRising: ({ before_m3PerS }, say) =>
    `Flow must rise from row to row; the row before has ${say.flow(before_m3PerS)}. Put the rows in order of flow.`,
  flowTwice: ({ before_m3PerS }, say) =>
    `This flow stands twice, ${say.flow(before_m3PerS)}. One flow can have one pressure only.`,
  shutOffWithoutPressure: () =>
    'A fan curve begins with the pressure at shut-off, and that is more than nothing.',
  endPressureNotLowest: ({ below_Pa }, say) =>
    below_Pa <= 0
      ? 'The curve has reached zero pressure before this row. Take the rows after that away.'
      : `The curve must end with its lowest pressure, below ${say.pressure(below_Pa)}; free delivery is at no pressure.`,
  lossNotRising: ({ before_Pa }, say) =>
    `Pressure must rise with flow; this has to be more than ${say.pressure(before_Pa)}.`,
  lossAtRest: () => 'Without flow there is no loss: the pressure here has to be zero.',
  onePoint: () => 'One point without flow says nothing. Add a second, or take this one away.',
  spreadOfNothing: () => 'No input that varies has this name.',
  spreadTwice: () => 'The spread of this input stands twice.',
  spreadWithoutTolerance: () => 'The design states no tolerance for this input.',
};

/** A finding of `checkDesign` in plain words. */
export function wordProblem(problem: Problem, system: UnitSystem): string {
  const say: Say = {
    length: (value) => sayQuantity(value, 'length', system),
    flow: (value) => sayQuantity(value, 'volumeFlow', system),
    pressure: (value) => sayQuantity(value, 'pressure', system),
    temperature: (value) => sayQuantity(value, 'temperature', system),
  };
  // Code and data belong together by the type of Problem, which indexing by a union cannot follow.
  const sentence = words[problem.code] as (data: unknown, say: Say) => string;
  return sentence(problem.data, say);
}
