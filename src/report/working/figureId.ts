import type { Figure } from '../../core/system/working/book.ts';
import type { FigureId } from './types.ts';

/** The id under which a figure of the core is found; `figureIds.ts` makes the same ones for cells. */
export function figureId({ kind, of, stopped }: Pick<Figure, 'kind' | 'of' | 'stopped'>): FigureId {
  const place = of === null ? '' : `:${typeof of === 'number' ? of + 1 : of}`;
  return `${stopped ? 'stopped:' : ''}${kind}${place}`;
}
