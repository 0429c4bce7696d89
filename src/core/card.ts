import type { AssumptionKey } from './assumptions.ts';
import type { SourceKey } from './sources.ts';

/** Where a stated range or scatter comes from. "not stated" is a legal, visible answer; blank is not. */
export type Origin = 'source' | 'textbook' | 'computed' | 'memory' | 'common practice' | 'not stated';

/**
 * What a published number is, against which a method is held. `measured` on a bench by somebody; `handbook` a printed table or
 * correlation of another origin; `worked example` of a textbook; `computed elsewhere` by a library, a series or an
 * integration that knows nothing of the method; `worked again` the very same equation by hand or in another program, which
 * finds a slip of the pen and no more; `from memory` whatever it is, its digits were not seen in the source.
 */
export type CheckKind =
  | 'measured'
  | 'handbook'
  | 'worked example'
  | 'computed elsewhere'
  | 'worked again'
  | 'from memory';

/** Inclusive bounds of one variable of a method; `null` is an open end. */
export type Bounds = readonly [low: number | null, high: number | null];

/** A number that never changes and has a name in an equation. */
export interface Constant {
  readonly symbol: string;
  readonly says: string;
  /** In `unit`, which is of the SI. */
  readonly value: number;
  readonly unit: string;
}

/**
 * The record of one published method: what it computes, from where, how far it may be trusted.
 * The screen's working, the sheet's footnotes, the range notes and the tolerance study read this and nothing else.
 *
 * `V` names the variables of the method; a name carries its SI unit as a suffix (`gap_m`) unless it is dimensionless.
 */
export interface Card<V extends string = string> {
  readonly id: string;
  readonly title: string;
  /**
   * The equation in plain Unicode text, as one would write it by hand, in a grammar that a program can read:
   * clauses parted by `; `, the first of which gives the result, further ones what stands in it; each is
   * `name = expression` (once or twice `expression = expression`) or plain words.
   * An expression has numbers (`0.42`, `10⁻³`, `4/9`), names (a letter, Greek or not, an abbreviation such as `Re`, a `Δ`
   * before it, a `*` or `⁺` after it, a subscript as `_x` or `_ij`, dotted `ṁ`), sums with `+` and `−`, products always
   * with `·`, quotients with `/` (it takes the one factor before and after it; what is more stands in brackets), powers as `^` with
   * one factor or a bracket, or as `² ³ ⁴ ⁵`; `√` before one factor or a bracket; `Σ` over the product that follows; functions by
   * name with round brackets (`exp ln log₁₀ tanh sinh sin arctan artanh min max`, `table(x)` for one read by points). All
   * brackets are round; only the arguments of a function are parted by commas.
   */
  readonly equation: string;
  /** Name, SI unit and symbol of what the method returns, e.g. `friction factor, Fanning`, `1` and `f`. */
  readonly result: { readonly name: string; readonly unit: string; readonly symbol: string };
  /** What each variable is called in the equation, e.g. `{ free: 'f' }`. */
  readonly symbols: Readonly<Record<V, string>>;
  /** Constants of nature that stand in the equation by name. */
  readonly constants?: readonly Constant[];
  /** Variables that do not stand in the equation, with the reason in words. */
  readonly aside?: Readonly<Partial<Record<V, string>>>;
  readonly source: { readonly key: SourceKey; readonly where: string };
  /** Only the variables that have a range. An empty object with `rangeFrom: 'not stated'` says so. */
  readonly range: Readonly<Partial<Record<V, Bounds>>>;
  readonly rangeFrom: Origin;
  /** One standard deviation, relative to the result; `null` with `from: 'not stated'` where nobody says. */
  readonly scatter: { readonly sigma: number | null; readonly from: Origin };
  readonly assumes: readonly AssumptionKey[];
  /** A worked example: `printed` is the answer with the digits its source prints (half a unit in the last place is allowed). */
  readonly example: {
    readonly given: Readonly<Record<V, number>>;
    readonly printed: string;
    readonly kind: CheckKind;
    readonly where: string;
    /** Reason for a wider tolerance than the printed digits give, with that tolerance (relative). */
    readonly because?: string;
    readonly within?: number;
  };
  /** The method itself, called by name: used by the worked example, the working and the tests. */
  readonly evaluate: (given: Readonly<Record<V, number>>) => number;
}

/** Types a card and freezes it. */
export function defineCard<V extends string>(card: Card<V>): Card<V> {
  return Object.freeze(card);
}

/** How much a note takes away from an answer. */
export type Severity = 'info' | 'caution' | 'beyond';

/** Everything that can limit trust in an answer; `report` has words for each. */
export type NoteCode =
  | 'outsideRange'
  | 'transition'
  | 'unevenFeed'
  | 'bondAboveGlass'
  | 'aboveRating'
  | 'severalPoints'
  | 'secondOpinion'
  | 'tightGap'
  | 'fanObstructed'
  | 'fanBackwards'
  | 'bridgedDip'
  | 'airRunsBack'
  | 'lyingFins';

/** Limited trust, as data. `report/wording` says it in words, once, for screen, print, CSV and terminal alike. */
export interface Note {
  readonly code: NoteCode;
  readonly severity: Severity;
  /** Card whose range was left, where the note is about a method. */
  readonly card?: string;
  /** Place in the design, e.g. `sink 3`, as a stable key. */
  readonly where?: string;
  readonly variable?: string;
  readonly value?: number;
  readonly low?: number | null;
  readonly high?: number | null;
}

/**
 * Range notes of one card at one point. Called at the converged answer, never on the way to it.
 * @param given values of the card's variables; a variable left out is not judged
 */
export function checkRange<V extends string>(
  card: Card<V>,
  given: Readonly<Partial<Record<V, number>>>,
  where?: string,
): Note[] {
  const notes: Note[] = [];
  for (const variable in card.range) {
    const bounds = card.range[variable];
    const value = given[variable];
    if (bounds === undefined || value === undefined) continue;
    const [low, high] = bounds;
    if ((low !== null && value < low) || (high !== null && value > high)) {
      notes.push({
        code: 'outsideRange',
        severity: 'beyond',
        card: card.id,
        ...(where === undefined ? {} : { where }),
        variable,
        value,
        low,
        high,
      });
    }
  }
  return notes;
}
