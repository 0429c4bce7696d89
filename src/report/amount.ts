import type { FigureId } from './working/types.ts';

/** The number behind a text, in the unit in which it is shown; `null` where there is none to give. */
export interface Amount {
  readonly value: number | null;
  /** Symbol, empty for a plain number. */
  readonly unit: string;
  /** Where its working is found, if it has one. */
  readonly figure?: FigureId;
}

/** A number as a reader sees it, together with the number itself. */
export interface Said extends Amount {
  readonly text: string;
}

export type Amounts<K extends string> = Readonly<Record<K, Amount>>;
