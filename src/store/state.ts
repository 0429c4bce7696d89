import type { Outcome } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { Path } from '../model/path.ts';
import type { ReadProblem, ReadResult } from '../model/readDesign.ts';
import type { UnitSystem } from '../model/say.ts';
import type { PartId } from '../report/drawing.ts';
import type { ByPath, Draft } from './drafts.ts';
import type { Edit, History } from './history.ts';

export type Position = Design['positions'][number];

export interface DesignState {
  /** Everything that reads well by itself; where a text is wrong, the value from before. Always fits the schema. */
  readonly design: Design;
  readonly drafts: ByPath<Draft>;
  /** Unit in which each field was last typed. */
  readonly units: ByPath<string>;
  readonly system: UnitSystem;
  /** Sentences on values that do not go together, by the field that says it. */
  readonly clashes: ByPath<string>;
  /** All that is wrong now, texts first, each with its place. */
  readonly problems: readonly ReadProblem[];
  /** Something is wrong: design and outcome below are the last that went together. */
  readonly stale: boolean;
  readonly solvedDesign: Design;
  readonly outcome: Outcome;
  readonly history: History;
  readonly selectedPart: PartId;
  /** Why the last action was refused, or what was noted in opening a file. */
  readonly notice: string | null;
  /** Which of the kept designs this is; `null` while it is none of them. */
  readonly identity: Identity | null;
  readonly keeping: Keeping;
}

/** A design kept by the browser; variants of one box share their family. */
export interface Identity {
  readonly id: string;
  readonly family: string;
}

/**
 * `unknown`: nothing was there to keep yet. `full`, `refused`: the browser does not keep it. `parted`: another tab has
 * changed the same design, and neither may overwrite the other.
 */
export type Keeping = 'unknown' | 'kept' | 'full' | 'refused' | 'parted';

/** What a kept design brings back: texts as typed, wrong ones too, and the last design that went together. */
export type KeptState = Pick<
  DesignState,
  'design' | 'solvedDesign' | 'drafts' | 'units' | 'system' | 'identity'
>;

/** What stands in the fields; everything else follows from it. */
export type Entered = Pick<DesignState, 'design' | 'drafts' | 'units' | 'system'>;

/** An action that may be refused returns the reason; it stands in `notice` too. */
export type Refusal = string | null;

export interface DesignActions {
  /** A text as typed, for quantities, counts and texts. */
  readonly setText: (path: Path, text: string) => void;
  /** A value that needs no reading: flags, choices, and anything set by a button. */
  readonly setValue: (path: Path, value: boolean | string | number) => void;
  /** Several values as one edit, called `name`; what was typed in their places goes. */
  readonly setMany: (values: Readonly<Record<Path, boolean | string | number>>, name: string) => void;
  /** The value and the unit that a new design has there. */
  readonly resetField: (path: Path) => void;
  /** Keys that follow in the same field are another edit. */
  readonly endEdit: () => void;
  /** @returns the edit that was taken back, `null` where there was none */
  readonly undo: () => Edit | null;
  readonly redo: () => Edit | null;
  readonly addPosition: () => Refusal;
  readonly duplicatePosition: (index: number) => Refusal;
  readonly removePosition: (index: number) => Refusal;
  readonly setAllPositions: (change: Partial<Position>, name: string) => void;
  /** An edit that is worked out elsewhere: what changes, or why it cannot. */
  readonly apply: (change: (entered: Entered) => Partial<Entered> | string, name: string) => Refusal;
  readonly addPart: () => Refusal;
  readonly removePart: (index: number) => Refusal;
  /** A row after this one, halfway to the next; after the last, halfway to it. `list`: `fan.curve`, `moreFans[0].curve`, `extras[0].points`. */
  readonly addPoint: (list: Path, after: number) => Refusal;
  readonly removePoint: (list: Path, index: number) => Refusal;
  readonly addFan: () => Refusal;
  readonly removeFan: (index: number) => void;
  readonly addExtra: () => Refusal;
  readonly removeExtra: (index: number) => void;
  readonly openExample: (example: Design) => void;
  readonly newDesign: () => void;
  /** Replaces the design by that of a file, or leaves everything as it is and says why. */
  readonly openText: (text: string) => ReadResult;
  readonly restore: (kept: KeptState) => void;
  readonly setIdentity: (identity: Identity | null) => void;
  readonly setSystem: (system: UnitSystem) => void;
  readonly selectPart: (part: PartId) => void;
  /** Puts a sentence before the reader, or takes it away. */
  readonly tell: (notice: string | null) => void;
  readonly setKeeping: (keeping: DesignState['keeping']) => void;
}
