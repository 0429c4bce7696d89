import type { Factors } from '../../core/system/input.ts';
import type { Unsolved } from '../../core/system/outcome.ts';
import type { Design } from '../../model/design.ts';

/** What a bench may tell of a box: the bond’s conductivity, the crack under the baffle, the slot’s loss, the fan’s flow, emissivities. */
export type Unknown = 'bond' | 'leak' | 'slot' | 'fan' | 'emissivity';

/** In the order in which a workshop thinks of them. */
export const allUnknowns: readonly Unknown[] = ['bond', 'leak', 'slot', 'fan', 'emissivity'];

/** One fit takes up to three of them. */
export const mostUnknowns = 3;

export type ReadingKind = 'temperature' | 'pressure' | 'flow' | 'voltage' | 'sound';
export type TemperaturePlace = Design['readings']['temperatures'][number]['where'];

/** How the prototype was run while it was read. */
export interface Conditions {
  /** Mean watts of all resistors together. */
  readonly load_W: number;
  readonly room_K: number;
  /** At the first kind of fan; fans of other kinds in proportion. Below its start voltage it stands. */
  readonly fan_V: number;
  /** `null` for a box at rest; otherwise seconds since the load came on, everything at room temperature before. */
  readonly time_s: number | null;
}

/** One reading of a prototype, SI. */
export interface Reading extends Conditions {
  /** Of all readings of a design, in their order; and its place in the design, `readings.temperatures[2]`. */
  readonly index: number;
  readonly path: string;
  readonly kind: ReadingKind;
  /** Of temperatures; `null` otherwise. */
  readonly where: TemperaturePlace | null;
  /** Resistor or sink, counted from the fan, 1 the first; not read for exhaust air and for what is no temperature. */
  readonly number: number;
  /** K, Pa, m³/s, V or dBA. */
  readonly value: number;
  /** Expanded uncertainty of the instrument, 95 %: twice its standard uncertainty. */
  readonly within: number;
}

/** Why a reading has nothing to be held against. */
export type NoAnswer =
  | Unsolved['reason']
  | 'noSuchResistor'
  | 'noSuchSink'
  /** The design has no load that could be scaled to the watts of the reading. */
  | 'noLoad'
  /** No fan turns at these volts: nothing to hear. */
  | 'nothingTurns'
  /** The box with other values in it, or at this moment, cannot be followed. */
  | 'notFollowed';

export interface Computed {
  readonly value: number | null;
  /** Where `value` is `null`. */
  readonly why: NoAnswer | null;
}

export interface BenchQuestion {
  readonly design: Design;
}

/**
 * `instrument`: agrees within the instrument alone. `model`: beyond it, yet within instrument and the scatter of the methods
 * together. `disagrees`: beyond both.
 */
export type Agreement = 'instrument' | 'model' | 'disagrees';

/** What a computed value’s scatter comes from: a factor on a method, the leak as it was fitted, or the fan’s sound over its speed. */
export type ModelPart = keyof Factors | 'leak' | 'sound';

export interface CheckedReading extends Reading {
  readonly computed: number | null;
  readonly why: NoAnswer | null;
  /** Reading less computed. */
  readonly deviation: number | null;
  /** Deviation over `within`: inside the band from −1 to 1. */
  readonly times: number | null;
  /** One standard deviation of the computed value by the scatter of its methods, in the unit of the reading. */
  readonly model: number | null;
  /** Half width of the band of instrument and methods together, 95 %. */
  readonly both: number | null;
  readonly agreement: Agreement | null;
  /** The method that scatters it most, and how much of the variance comes of it; `null` where none does. */
  readonly foremost: { readonly part: ModelPart; readonly share: number } | null;
}

/** A sum of squares held against chance. */
export interface ChiSquare {
  readonly value: number;
  readonly degrees: number;
  /** Chance of as much or more where only the instruments err; `null` without a degree of freedom. */
  readonly chance: number | null;
}

export interface BenchCheckResult {
  readonly readings: readonly CheckedReading[];
  /** Readings with a computed value beside them; of these, by how they agree. */
  readonly answered: number;
  readonly agreeing: Readonly<Record<Agreement, number>>;
  /** Over the instruments alone, nothing fitted; voltages at the fan tell of leads, not of the box, and are left out. */
  readonly chiSquare: ChiSquare;
  /** What scatters the computed values: one standard deviation of the logarithm of a factor, metres for the leak, a share of the level for sound. */
  readonly parts: readonly {
    readonly part: ModelPart;
    readonly sigma: number;
    /** Fitted to readings before; the fit’s own uncertainty stands in place of the card’s scatter. */
    readonly fitted: boolean;
  }[];
}

export interface BenchFitQuestion {
  readonly design: Design;
  /** One to three, each once. */
  readonly unknowns: readonly Unknown[];
}

/** Why there are no fitted values. */
export type Refusal =
  | { readonly why: 'noUnknowns' }
  | { readonly why: 'tooManyUnknowns'; readonly most: number }
  | { readonly why: 'notInDesign'; readonly unknown: Unknown }
  /** `used`: readings that can tell anything; as many as unknowns at least. */
  | { readonly why: 'tooFewReadings'; readonly used: number; readonly needed: number }
  | { readonly why: 'noAnswer'; readonly reading: number; readonly noAnswer: NoAnswer }
  | { readonly why: 'insensitive'; readonly unknown: Unknown }
  | {
      readonly why: 'notDistinguishable';
      /** The two that share most of what the readings leave open. */
      readonly unknowns: readonly [Unknown, Unknown];
      /** Between these two as the readings see them: 1 or −1 where one does just what the other does. */
      readonly alikeness: number;
      /** Way along which the unknowns may move without a reading telling, in the order asked for, of length 1. */
      readonly direction: readonly number[];
    }
  /** An unknown ran to the end of what is believable. */
  | { readonly why: 'atBound'; readonly unknown: Unknown; readonly bound: number }
  | { readonly why: 'notConverged' };

export interface FittedValue {
  readonly unknown: Unknown;
  /** Factor on the method of 1 as published; metres for the leak. `start` is what the design had. */
  readonly start: number;
  readonly value: number;
  /** Interval of 95 %. */
  readonly low: number;
  readonly high: number;
  /** Half of it, 95 %: relative for factors, metres for the leak; the wider side of a leak close to none. */
  readonly within: number;
  /** Ended at no leak at all: `high` is then a one-sided limit of 95 %. */
  readonly atZero: boolean;
  /** What `within` would be, were all others known. */
  readonly alone: number;
}

export interface FittedReading extends Reading {
  readonly computedBefore: number;
  readonly computedAfter: number;
  /** Reading less computed, over `within`. */
  readonly timesBefore: number;
  readonly timesAfter: number;
  /** One standard deviation of the value computed after, by the fitted values’ own uncertainty. */
  readonly sigmaAfter: number;
  /** Share of what this reading tells in all that the fit knows (its leverage): near 1 nothing else checks it. */
  readonly leverage: number;
  readonly agreementAfter: 'inside' | 'outside';
}

export interface BenchFitResult {
  readonly unknowns: readonly Unknown[];
  /** Then all lists below are empty. */
  readonly refused: Refusal | null;
  readonly values: readonly FittedValue[];
  /** Row by row, in the order of `values`, of what was fitted (logarithms of factors; the leak itself). */
  readonly correlation: readonly (readonly number[])[];
  readonly readings: readonly FittedReading[];
  /** Readings left out, for no unknown moves them: volts at the fan, and its sound. */
  readonly leftOut: readonly number[];
  readonly before: ChiSquare;
  readonly after: ChiSquare;
  /** All uncertainties are this many times what the instruments alone give, since they scatter more than these allow; 1 otherwise. */
  readonly birge: number;
  /** Standard uncertainties in one half width of 95 %. */
  readonly coverage: number;
  readonly iterations: number;
  /** How often all readings were computed. */
  readonly solves: number;
}

export interface BenchAdviceQuestion {
  readonly design: Design;
  /** Those to be told better; all that the design has where left out. */
  readonly unknowns?: readonly Unknown[];
}

/** How a box would be run for a reading: as designed, with less at the fan, or with its fans stopped. */
export type AdvisedRun = 'nominal' | 'reduced' | 'stopped';

/** One reading that could be taken, settled. */
export interface Candidate extends Conditions {
  /** `onFilm 3 nominal`, unique. */
  readonly id: string;
  readonly run: AdvisedRun;
  readonly kind: Exclude<ReadingKind, 'voltage'>;
  readonly where: TemperaturePlace | null;
  readonly number: number;
  readonly computed: number;
  /** Of an ordinary instrument, 95 %, in the unit of the reading; and where that comes from. */
  readonly within: number;
  readonly withinFrom: 'iec60584' | 'commonPractice';
  /** Change of the reading with 1 % more of a factor, with 0.1 mm more of the leak; `null` where the design lacks the unknown. */
  readonly moves: Readonly<Record<Unknown, number | null>>;
  /** Uncertainty, 95 %, of one unknown from this reading alone, all others known: relative, metres for the leak; `null` where it tells nothing. */
  readonly alone: Readonly<Record<Unknown, number | null>>;
}

/** A reading worth adding, in the order of adding. */
export interface Advised {
  readonly candidate: string;
  /** Uncertainties, 95 %, of the unknowns asked for once it is there too; `null` where still open. */
  readonly leaves: Readonly<Partial<Record<Unknown, number | null>>>;
}

/** How long until a place stands still. */
export interface Wait {
  readonly where: TemperaturePlace;
  readonly number: number;
  /** From a cold box on, until it is no farther than `left_K` from where it ends. */
  readonly time_s: number;
  readonly end_K: number;
  readonly left_K: number;
}

/** How the box warms up in one way of running it. */
export interface Course {
  readonly run: AdvisedRun;
  readonly waits: readonly Wait[];
  /** Slowest time constant, from the end of the course; `null` where hardly anything warms up. */
  readonly slowest_s: number | null;
}

export interface BenchAdviceResult {
  readonly unknowns: readonly Unknown[];
  readonly candidates: readonly Candidate[];
  /** What the readings that are there leave open, 95 %; `null` where they tell nothing of it, or not apart from another. */
  readonly now: Readonly<Partial<Record<Unknown, number | null>>>;
  readonly advised: readonly Advised[];
  readonly courses: readonly Course[];
  /** Ways the box could not be run for a reading, with the reason. */
  readonly cannot: readonly { readonly run: AdvisedRun; readonly why: NoAnswer }[];
}
