/** Words beside a plot's line: at a point, to its right or its left. */
export interface Words {
  readonly lines: readonly string[];
  readonly x: number;
  /** Foot of the first line. */
  readonly y: number;
  readonly anchor: 'start' | 'end';
}

export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Type of plots, 6.5 pt, in millimetres: from line to line, and the width of a letter, generously. */
export const plotType = { line: 2.7, letter: 1.35 } as const;

export function areaOf({ lines, x, y, anchor }: Words): Area {
  const width = plotType.letter * Math.max(...lines.map((line) => line.length));
  return {
    x: anchor === 'start' ? x : x - width,
    y: y - plotType.line + 0.4,
    width,
    height: plotType.line * lines.length,
  };
}

export function meet(a: Area, b: Area): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

export function within(inner: Area, outer: Area): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

/** The first place that is on the paper and clear of what is taken; `null` where there is none. */
export function placeText(places: readonly Words[], taken: readonly Area[], paper: Area): Words | null {
  const isFree = (words: Words) => {
    const area = areaOf(words);
    return within(area, paper) && !taken.some((other) => meet(area, other));
  };
  return places.find(isFree) ?? null;
}
