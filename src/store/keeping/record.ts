import { readDesign } from '../../model/readDesign.ts';
import type { ByPath, Draft } from '../drafts.ts';
import type { DesignState, Identity, KeptState } from '../state.ts';

/** One design as the browser keeps it. */
export interface KeptDesign extends Identity {
  /** ISO 8601. */
  readonly savedAt: string;
  /** Another with every writing: whoever has seen this one may write the next. */
  readonly stamp: string;
  readonly content: Omit<KeptState, 'identity'>;
}

export function contentOf({
  design,
  solvedDesign,
  drafts,
  units,
  system,
}: DesignState): KeptDesign['content'] {
  return { design, solvedDesign, drafts, units, system };
}

/**
 * What was found in the browser's store, whoever wrote it: an older Throughfin, or a hand. @returns `null` where it does
 * not read as a design any more
 */
export function readKept(found: unknown): KeptDesign | null {
  if (!isRecord(found) || !isRecord(found.content)) return null;
  const { id, family, savedAt, stamp, content } = found;
  if (typeof id !== 'string' || typeof family !== 'string') return null;
  const solved = readDesign(content.solvedDesign);
  if (!solved.ok) return null;
  // The browser keeps one object for both where nothing was wrong.
  const design = content.design === content.solvedDesign ? solved : readDesign(content.design);
  return {
    id,
    family,
    savedAt: String(savedAt),
    stamp: String(stamp),
    content: {
      solvedDesign: solved.design,
      design: design.ok ? design.design : solved.design,
      drafts: design.ok ? draftsIn(content.drafts) : {},
      units: wordsIn(content.units),
      system: content.system === 'inch' ? 'inch' : 'metric',
    },
  };
}

/** What stands in the browser's store and does not read as a design any more. */
export interface Unread {
  readonly title: string;
  /** The first of what is wrong with it. */
  readonly reason: string;
}

/** @returns `null` where it reads */
export function unreadIn(found: unknown): Unread | null {
  if (readKept(found) !== null) return null;
  const content = isRecord(found) && isRecord(found.content) ? found.content : {};
  const solved = readDesign(content.solvedDesign);
  const { title } = isRecord(content.solvedDesign) ? content.solvedDesign : {};
  return {
    title: typeof title === 'string' ? title : '',
    reason: solved.ok
      ? 'It does not say which design it is.'
      : (solved.problems[0]?.reason ?? 'It cannot be read.'),
  };
}

/** The one design that a Throughfin without a list of them kept. */
export function readLastDesign(found: unknown): KeptDesign['content'] | null {
  if (!isRecord(found)) return null;
  const read = readDesign(found.design);
  if (!read.ok) return null;
  const system = found.system === 'inch' ? 'inch' : 'metric';
  return { design: read.design, solvedDesign: read.design, drafts: {}, units: wordsIn(found.units), system };
}

function draftsIn(found: unknown): ByPath<Draft> {
  return filtered(
    found,
    (draft): draft is Draft =>
      isRecord(draft) &&
      typeof draft.text === 'string' &&
      (draft.problem === null || typeof draft.problem === 'string'),
  );
}

function wordsIn(found: unknown): ByPath<string> {
  return filtered(found, (word): word is string => typeof word === 'string');
}

function filtered<T>(found: unknown, fits: (value: unknown) => value is T): Record<string, T> {
  if (!isRecord(found)) return {};
  return Object.fromEntries(Object.entries(found).filter((entry): entry is [string, T] => fits(entry[1])));
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
