import { spread } from './spread.ts';

/** Words that want a place in a lane beside a view, where nothing else is drawn. */
export interface Wish {
  /** From the fullest to the shortest. */
  readonly words: readonly string[];
  /** Middle of where they would stand best. */
  readonly at: number;
  /** May go where there is no room. */
  readonly spare: boolean;
}

export interface Stand {
  readonly words: string;
  readonly at: number;
  readonly width: number;
}

/** Nothing to be touched is smaller than this. */
export const tagSize = 24;
/** Between two that stand side by side. */
const between = 8;
/** Generous, for fonts differ. */
const letter = 6.1;

/** Pixels that words take, with their edge. */
export function widthOf(words: string): number {
  return Math.max(tagSize, Math.ceil(words.length * letter) + 8);
}

/**
 * Words side by side between two ends. Where not all fit they are shortened: all by a step, the longest first, then the
 * spare ones to their shortest; then spare ones go, then the rest is cut down to values.
 * @returns a place for each, `null` for what found none
 */
export function standInRow(wishes: readonly Wish[], low: number, high: number): (Stand | null)[] {
  const level = wishes.map((): number | null => 0);
  const wordsAt = (index: number) => {
    const at = level[index] ?? null;
    const { words } = wishes[index] as Wish;
    return at === null ? null : (words[Math.min(at, words.length - 1)] ?? null);
  };
  const widthAt = (index: number) => {
    const words = wordsAt(index);
    return words === null ? 0 : widthOf(words) + between;
  };
  const fits = () => wishes.reduce((sum, _, index) => sum + widthAt(index), -between) <= high - low;
  const step = (may: (wish: Wish, now: number) => boolean, next: (now: number) => number | null) => {
    while (!fits()) {
      const widest = wishes
        .map((wish, index) => ({ index, wish, now: level[index] ?? null }))
        .filter(({ wish, now }) => now !== null && may(wish, now))
        .toSorted((a, b) => widthAt(b.index) - widthAt(a.index))[0];
      if (widest === undefined || widest.now === null) return;
      level[widest.index] = next(widest.now);
    }
  };
  step(
    (_, now) => now === 0,
    () => 1,
  );
  step(
    ({ spare }, now) => spare && now === 1,
    () => 2,
  );
  step(
    ({ spare }) => spare,
    () => null,
  );
  step(
    (_, now) => now < 2,
    (now) => now + 1,
  );
  step(
    () => true,
    () => null,
  );
  const order = [...wishes.keys()]
    .filter((index) => wordsAt(index) !== null)
    .toSorted((a, b) => (wishes[a]?.at ?? 0) - (wishes[b]?.at ?? 0));
  // Less the widths before each, keeping the distance is keeping the order.
  let before = 0;
  const starts = order.map((index) => {
    const own = before;
    before += widthAt(index);
    return own;
  });
  const places = spread(
    order.map((index, i) => (wishes[index]?.at ?? 0) - (widthAt(index) - between) / 2 - (starts[i] ?? 0)),
    0,
    low,
    Math.max(low, high - before + between),
  );
  const stands = wishes.map((): Stand | null => null);
  order.forEach((index, i) => {
    const width = widthAt(index) - between;
    const words = wordsAt(index);
    if (words !== null) stands[index] = { words, width, at: (places[i] ?? 0) + (starts[i] ?? 0) + width / 2 };
  });
  return stands;
}

/** Words one below another, each as full as the lane is wide. */
export function standInColumn(
  wishes: readonly Wish[],
  low: number,
  high: number,
  width: number,
): (Stand | null)[] {
  const fitting = wishes.map(({ words }) => words.find((each) => widthOf(each) <= width));
  const rows = Math.floor((high - low) / tagSize) + 1;
  const able = [...wishes.keys()].filter((index) => fitting[index] !== undefined);
  const spare = able.filter((index) => wishes[index]?.spare);
  const gone = new Set(spare.slice(Math.max(0, spare.length - Math.max(0, able.length - rows))));
  const order = able
    .filter((index) => !gone.has(index))
    .toSorted((a, b) => Math.round((wishes[a]?.at ?? 0) - (wishes[b]?.at ?? 0)))
    .slice(0, rows);
  const places = spread(
    order.map((index) => wishes[index]?.at ?? 0),
    tagSize,
    low,
    high,
  );
  const stands = wishes.map((): Stand | null => null);
  order.forEach((index, i) => {
    const words = fitting[index] ?? '';
    stands[index] = { words, width: widthOf(words), at: places[i] ?? 0 };
  });
  return stands;
}
