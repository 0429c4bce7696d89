import type { Card } from '../../card.ts';
import type { Balance } from './balance.ts';

/** Where a value comes from: typed in, fixed by the method, found together with all others, or the step with this number. */
export type Origin = 'input' | 'constant' | 'settled' | number;

export interface Quantity {
  readonly value: number;
  readonly from: Origin;
}

export type PlacePart =
  | 'box'
  | 'room'
  | 'plenum'
  | 'gap'
  | 'exhaust'
  | 'sink'
  | 'resistor'
  | 'fan'
  | 'stage'
  | 'passage'
  | 'limit';

/** Where in the box a step stands; `key` tells stages, passages and limits apart, `index` parts of a row (0 is the first). */
export interface Place {
  readonly part: PlacePart;
  readonly index?: number;
  readonly key?: string;
  readonly stopped?: boolean;
}

/** A method or a balance with the values of the answer put in. */
export interface Step {
  /** From 1, in the order of computation: only smaller ones are built upon. */
  readonly number: number;
  readonly record:
    | { readonly kind: 'card'; readonly card: Card }
    | { readonly kind: 'balance'; readonly balance: Balance };
  /** All the places at which just this was computed. */
  readonly places: readonly Place[];
  readonly given: Readonly<Record<string, number>>;
  readonly from: Readonly<Record<string, Origin>>;
  /** What a numbered variable is here, where the balance alone cannot know. */
  readonly names: Readonly<Record<string, string>>;
  /** As the answer has it; what the record evaluates to, within rounding. */
  readonly value: number;
}

/** One number of the answer and the step that gives it. */
export interface Figure {
  readonly kind: string;
  /** Counted from 0, or by name; `null` for the whole box. */
  readonly of: number | string | null;
  readonly stopped: boolean;
  readonly value: number;
  /** Numbers of all steps behind it, rising; the last gives the figure. */
  readonly steps: readonly number[];
}

/** Steps told so far. The same values put into the same equation are one step, at several places. */
export interface Book {
  readonly steps: Step[];
  readonly figures: Figure[];
  readonly known: Map<string, number>;
}

export type Given<V extends string> = Readonly<Record<V, Quantity | number>>;

export function createBook(): Book {
  return { steps: [], figures: [], known: new Map() };
}

export function settled(value: number): Quantity {
  return { value, from: 'settled' };
}

/** A value that belongs to the method and not to the design: a datum, a black body, an end of the transition. */
export function always(value: number): Quantity {
  return { value, from: 'constant' };
}

/** @param value of the answer, where it stands there already; what the card says where not */
export function tellCard<V extends string>(
  book: Book,
  card: Card<V>,
  place: Place,
  given: Given<V>,
  value?: number,
): Quantity {
  const record = { kind: 'card', card: card as unknown as Card } as const;
  return tell(book, record, card.id, card.evaluate, place, given, value);
}

/** The same of a balance. */
export function tellBalance<V extends string>(
  book: Book,
  balance: Balance<V>,
  place: Place,
  given: Given<V>,
  value?: number,
  names: Step['names'] = {},
): Quantity {
  const record = { kind: 'balance', balance: balance as unknown as Balance } as const;
  return tell(book, record, balance.id, balance.evaluate, place, given, value, names);
}

function tell<V extends string>(
  book: Book,
  record: Step['record'],
  id: string,
  evaluate: (given: Readonly<Record<V, number>>) => number,
  place: Place,
  given: Given<V>,
  known?: number,
  names: Step['names'] = {},
): Quantity {
  const values = {} as Record<V, number>;
  const from = {} as Record<V, Origin>;
  for (const variable of Object.keys(given) as V[]) {
    const quantity = given[variable];
    values[variable] = typeof quantity === 'number' ? quantity : quantity.value;
    from[variable] = typeof quantity === 'number' ? 'input' : quantity.from;
  }
  const value = known ?? evaluate(values);
  const key = `${id} ${value} ${JSON.stringify(values)} ${JSON.stringify(from)}`;
  const before = book.known.get(key);
  if (before !== undefined) {
    addPlace(book, before, place);
    return { value, from: before };
  }
  const number = book.steps.length + 1;
  book.known.set(key, number);
  book.steps.push({ number, record, places: [place], given: values, from, names, value });
  return { value, from: number };
}

function addPlace(book: Book, number: number, place: Place): void {
  const step = book.steps[number - 1] as Step;
  const same = (other: Place) =>
    other.part === place.part &&
    other.index === place.index &&
    other.key === place.key &&
    other.stopped === place.stopped;
  if (!step.places.some(same)) book.steps[number - 1] = { ...step, places: [...step.places, place] };
}

/**
 * Notes a figure down with everything that it is built upon.
 * @param also further results that belong to its working, told before it
 */
export function noteFigure(
  book: Book,
  kind: string,
  of: Figure['of'],
  stopped: boolean,
  quantity: Quantity,
  also: readonly Quantity[] = [],
): void {
  if (typeof quantity.from !== 'number') return;
  const reached = new Set<number>();
  const open = [quantity, ...also].flatMap(({ from }) => (typeof from === 'number' ? [from] : []));
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (reached.has(next)) continue;
    reached.add(next);
    const step = book.steps[next - 1] as Step;
    for (const origin of Object.values(step.from)) if (typeof origin === 'number') open.push(origin);
  }
  const last = quantity.from;
  const steps = [...reached].filter((number) => number !== last).sort((a, b) => a - b);
  book.figures.push({ kind, of, stopped, value: quantity.value, steps: [...steps, last] });
}
