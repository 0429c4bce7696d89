import type { Design } from '../design.ts';
import { fieldAt } from '../fields.ts';
import type { Dimension } from '../say.ts';
import { tolerances } from './tolerances.ts';
import type { Spread } from './usualSpread.ts';

/** What the size of a spread measures: a share, or a difference of what its input measures. */
export function sizeDimension({
  path,
  relative,
  kind,
}: Pick<Spread, 'path' | 'relative' | 'kind'>): Dimension {
  const field = fieldAt(path);
  if (relative || kind === 'lognormal' || field.kind !== 'quantity') return 'ratio';
  return field.dimension === 'temperature' ? 'temperatureDifference' : field.dimension;
}

/** Least and largest tolerance that the design states for the rows of an input, as shares. */
export function statedTolerance(design: Design, path: string): readonly [low: number, high: number] {
  const list = path.startsWith('positions')
    ? design.positions
    : path.startsWith('parts')
      ? design.parts
      : [null];
  const all = list.map((_, row) => tolerances[path]?.(design, row) ?? 0);
  return [Math.min(...all), Math.max(...all)];
}
