import type { CheckKind } from '../../core/card.ts';

/** Kinds of published numbers, the weightiest evidence first. */
export const kindOrder: readonly CheckKind[] = [
  'measured',
  'handbook',
  'worked example',
  'computed elsewhere',
  'worked again',
  'from memory',
];

interface KindWords {
  readonly title: string;
  /** Continues "… numbers": `31 of worked examples`. */
  readonly counted: string;
  readonly means: string;
}

export const kindWords: Readonly<Record<CheckKind, KindWords>> = {
  measured: {
    title: 'Measured',
    counted: 'measured on a bench',
    means: 'somebody’s reading on a bench',
  },
  handbook: {
    title: 'Handbook',
    counted: 'from handbooks and tables',
    means: 'a printed table or correlation',
  },
  'worked example': {
    title: 'Worked example',
    counted: 'of worked examples in textbooks',
    means: 'an example that a textbook works through',
  },
  'computed elsewhere': {
    title: 'Computed elsewhere',
    counted: 'computed elsewhere',
    means: 'a library, a series or an integration that knows nothing of the method',
  },
  'worked again': {
    title: 'Worked again',
    counted: 'of the same equation worked again',
    means: 'the same equation by hand or in another program: it finds slips, not wrong physics',
  },
  'from memory': {
    title: 'From memory',
    counted: 'from memory',
    means: 'known to the authors, its digits not seen in the source',
  },
};
