import type { Note } from '../card.ts';
import { ordinaryRun, type Run, type SystemInput } from './input.ts';
import { usedCards } from './methods.ts';
import { collectNotes, type Standing } from './notes.ts';
import { settleSystem } from './solveSystem.ts';

/** How far an answer may be trusted, and what it rests on. */
export interface Trust {
  readonly notes: readonly Note[];
  /** Where the answer stands in the ranges that were judged. */
  readonly stands: readonly Standing[];
  /** Ids of the cards this answer used. */
  readonly used: readonly string[];
}

/**
 * Judges the ranges of all methods once, at the answer. Apart from the answer itself because it brings along every card's
 * text, which the first answer on a screen need not wait for. Empty where there is no answer.
 */
export function trustOf(input: SystemInput, run: Run = ordinaryRun): Trust {
  const { work, outcome } = settleSystem(input, { ...run, pulses: false });
  if (!outcome.ok) return { notes: [], stands: [], used: [] };
  return { ...collectNotes(work, outcome.air, outcome.heat), used: usedCards(work) };
}
