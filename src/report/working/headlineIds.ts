import type { LimitKey, PassageKind } from '../../core/system/outcome.ts';
import type { FigureId } from './types.ts';

/** Ids of the figures that the first paint shows, apart from all others so that it need not wait for those. */
export const filmFigure = (index: number): FigureId => `film:${index + 1}`;
export const shareFigure = (kind: PassageKind): FigureId => `share:${kind}`;
export const limitFigure = (key: LimitKey): FigureId => `limit:${key}`;
export const marginFigure = (key: LimitKey): FigureId => `margin:${key}`;
export const loadFactorFigure = (key: LimitKey): FigureId => `loadFactor:${key}`;

/** Of the key figures on the bench: their own key, but where a figure has another name. */
export function keyFigure(key: string, hottest: number): FigureId {
  if (key === 'film') return filmFigure(hottest);
  return { load: 'total', pressure: 'fanPressure', fins: shareFigure('fins') }[key] ?? key;
}
