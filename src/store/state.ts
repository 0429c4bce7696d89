import type { Outcome } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { ExampleId } from '../model/examples/examples.ts';
import type { Path } from '../model/path.ts';
import type { ReadProblem, ReadResult } from '../model/readDesign.ts';
import type { UnitSystem } from '../model/say.ts';
import type { PartId } from '../report/drawing.ts';
import type { ByPath, Draft } from './drafts.ts';

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
  readonly selectedPart: PartId;
  /** Why the last action was refused, or what was noted in opening a file. */
  readonly notice: string | null;
  readonly keeping: 'unknown' | 'kept' | 'refused';
}

/** An action that may be refused returns the reason; it stands in `notice` too. */
export type Refusal = string | null;

export interface DesignActions {
  /** A text as typed, for quantities, counts and texts. */
  readonly setText: (path: Path, text: string) => void;
  /** A value that needs no reading: flags, choices, and anything set by a button. */
  readonly setValue: (path: Path, value: boolean | string | number) => void;
  /** Several such values at once, as one edit; all are taken or none. */
  readonly setMany: (values: Readonly<Record<Path, boolean | string | number>>) => void;
  readonly addPosition: () => Refusal;
  readonly duplicatePosition: (index: number) => Refusal;
  readonly removePosition: (index: number) => Refusal;
  readonly setAllPositions: (change: Partial<Position>) => void;
  readonly addPart: () => Refusal;
  readonly removePart: (index: number) => Refusal;
  /** A row after this one, halfway to the next; after the last, halfway to it. `list`: `fan.curve`, `moreFans[0].curve`, `extras[0].points`. */
  readonly addPoint: (list: Path, after: number) => Refusal;
  readonly removePoint: (list: Path, index: number) => Refusal;
  /** All rows at once, as pasted; a cell that does not read keeps its text and is told. */
  readonly replacePoints: (
    list: Path,
    rows: readonly (readonly [flow: string, pressure: string])[],
  ) => Refusal;
  readonly addFan: () => Refusal;
  readonly removeFan: (index: number) => void;
  readonly addExtra: () => Refusal;
  readonly removeExtra: (index: number) => void;
  readonly loadExample: (id: ExampleId) => void;
  readonly newDesign: () => void;
  /** Replaces the design by that of a file, or leaves everything as it is and says why. */
  readonly openText: (text: string) => ReadResult;
  readonly restore: (design: Design, system: UnitSystem, units: ByPath<string>) => void;
  readonly setSystem: (system: UnitSystem) => void;
  readonly selectPart: (part: PartId) => void;
  readonly dismissNotice: () => void;
  readonly setKeeping: (keeping: DesignState['keeping']) => void;
}
