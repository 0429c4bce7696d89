import type { Outcome } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { Path } from '../model/path.ts';
import type { ByPath, Draft } from './drafts.ts';

/** All that an undo brings back: what stood in the fields, and its answer, so that nothing is computed again. */
export interface Moment {
  readonly design: Design;
  readonly drafts: ByPath<Draft>;
  readonly units: ByPath<string>;
  readonly solvedDesign: Design;
  readonly outcome: Outcome;
}

/** One edit, however many keys it took. */
export interface Edit {
  /** As a reader would call it: "Side clearance", "Resistor 3 removed". */
  readonly name: string;
  /** The one field it was made in; `null` where it touched several. */
  readonly path: Path | null;
}

/** An edit beside the moment at its other end: before it in `past`, after it in `future`. */
export interface Step extends Edit {
  readonly moment: Moment;
}

export interface History {
  /** Oldest first. */
  readonly past: readonly Step[];
  /** What was undone, the next to redo last. */
  readonly future: readonly Step[];
  /** The field whose edit is still going on: further keys there belong to it. */
  readonly open: Path | null;
  /** Whether the last move was an undo. */
  readonly undone: boolean;
}

export const emptyHistory: History = { past: [], future: [], open: null, undone: false };

/** An outcome is large; older edits than this are forgotten. */
const longest = 100;

/** Takes down an edit made at `before`. Keys in the field that is open join its step; any other edit ends it. */
export function record(history: History, before: Moment, edit: Edit, isTyping: boolean): History {
  const open = isTyping ? edit.path : null;
  if (open !== null && open === history.open && !history.undone) {
    return history.future.length === 0 ? history : { ...history, future: [] };
  }
  const past = [...history.past, { ...edit, moment: before }].slice(-longest);
  return { past, future: [], open, undone: false };
}

/** Whoever leaves a field has finished his edit there. */
export function close(history: History): History {
  return history.open === null ? history : { ...history, open: null };
}

export interface Move {
  readonly history: History;
  readonly step: Step;
}

/** @returns `null` where there is nothing to undo */
export function stepBack({ past, future }: History, now: Moment): Move | null {
  const step = past.at(-1);
  if (step === undefined) return null;
  const undone = [...future, { name: step.name, path: step.path, moment: now }];
  return { step, history: { past: past.slice(0, -1), future: undone, open: null, undone: true } };
}

/** @returns `null` where there is nothing to redo */
export function stepForward({ past, future }: History, now: Moment): Move | null {
  const step = future.at(-1);
  if (step === undefined) return null;
  const redone = [...past, { name: step.name, path: step.path, moment: now }];
  return { step, history: { past: redone, future: future.slice(0, -1), open: null, undone: false } };
}

/** The edit that made the present state, with the state before it; an undone edit counts the other way round. */
export function lastMove({ past, future, undone }: History): Step | null {
  return (undone ? future : past).at(-1) ?? null;
}
