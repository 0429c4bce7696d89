import type { Card } from '../../card.ts';
import type { Work } from '../work.ts';
import type { Balance } from './balance.ts';
import {
  type Book,
  type Figure,
  type Given,
  noteFigure,
  type Place,
  type PlacePart,
  type Quantity,
  type Step,
  tellBalance,
  tellCard,
} from './book.ts';

/** The book, and the settled box that is being told into it. */
export interface Telling {
  readonly book: Book;
  readonly work: Work;
  /** The fans are at a stand. */
  readonly stopped: boolean;
  readonly card: <V extends string>(card: Card<V>, place: Place, given: Given<V>, value?: number) => Quantity;
  readonly balance: <V extends string>(
    balance: Balance<V>,
    place: Place,
    given: Given<V>,
    value?: number,
    names?: Step['names'],
  ) => Quantity;
  readonly figure: (kind: string, of: Figure['of'], quantity: Quantity, also?: readonly Quantity[]) => void;
  readonly at: (part: PlacePart, index?: number, key?: string) => Place;
}

export function telling(book: Book, work: Work): Telling {
  const stopped = work.path.fans === null;
  return {
    book,
    work,
    stopped,
    card: (card, place, given, value) => tellCard(book, card, place, given, value),
    balance: (balance, place, given, value, names) => tellBalance(book, balance, place, given, value, names),
    figure: (kind, of, quantity, also) => noteFigure(book, kind, of, stopped, quantity, also),
    at: (part, index, key) => ({
      part,
      ...(index === undefined ? {} : { index }),
      ...(key === undefined ? {} : { key }),
      ...(stopped ? { stopped } : {}),
    }),
  };
}

/** Values of a variable that comes any number of times. */
export function numbered(
  variable: string,
  values: readonly (Quantity | number)[],
): Record<string, Quantity | number> {
  return Object.fromEntries(values.map((value, i) => [`${variable}#${i + 1}`, value]));
}
