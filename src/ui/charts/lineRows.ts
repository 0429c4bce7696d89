import type { Level, LineChart } from '../../report/lineChart.ts';

export type LineRow = Readonly<Record<string, number | null>>;

/** All lines in one list by their common axis, as a chart of lines wants them. */
export function lineRows({ lines }: LineChart): LineRow[] {
  const rows = new Map<number, Record<string, number | null>>();
  for (const { key, points } of lines) {
    for (const { x, y } of points) {
      const row = rows.get(x) ?? { x };
      row[key] = y;
      rows.set(x, row);
    }
  }
  return [...rows.values()].sort((a, b) => (a.x ?? 0) - (b.x ?? 0));
}

export interface LineEnd {
  readonly key: string;
  readonly label: string;
  readonly x: number;
  readonly y: number;
}

/** Least room between two names at the ends of lines, as a share of the chart's height. */
const apart = 0.07;

/** Where the name of each line stands: at its last point, moved where it would cover another. */
export function lineEnds({ lines, yTicks }: LineChart): LineEnd[] {
  const span = (yTicks.at(-1) ?? 1) - (yTicks[0] ?? 0);
  const ends = lines
    .flatMap(({ key, label, points }) => {
      const last = points.findLast(({ y }) => y !== null);
      return last && last.y !== null ? [{ key, label, x: last.x, y: last.y }] : [];
    })
    .sort((a, b) => a.y - b.y);
  let floor = Number.NEGATIVE_INFINITY;
  const lifted = ends.map((end) => {
    const y = Math.max(end.y, floor);
    floor = y + apart * span;
    return { ...end, y };
  });
  // From the top down again, for a name above the paper is not drawn.
  let ceiling = yTicks.at(-1) ?? Number.POSITIVE_INFINITY;
  return lifted
    .reverse()
    .map((end) => {
      const y = Math.min(end.y, ceiling);
      ceiling = y - apart * span;
      return { ...end, y };
    })
    .reverse();
}

/** Levels with their names above the line, but below it where the next one up stands close. */
export function placedLevels({ levels, yTicks }: LineChart): (Level & { readonly below: boolean })[] {
  const span = (yTicks.at(-1) ?? 1) - (yTicks[0] ?? 0);
  return levels.map((level) => ({
    ...level,
    below: levels.some(({ y }) => y > level.y && y - level.y < apart * span),
  }));
}
