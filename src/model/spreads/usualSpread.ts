import type { SourceKey } from '../../core/sources.ts';
import type { Design } from '../design.ts';

export type Spread = Design['spreads'][number];
export type SpreadKind = Spread['kind'];

/** How far one draw reaches: one resistor, one box, or all boxes of a batch, which are made of one lot of stuff. */
export type Reach = 'resistor' | 'box' | 'batch';

/** Why something varies, and from where its size is known. */
export interface Cause {
  readonly because: string;
  readonly source: SourceKey | 'assumption';
}

/** A spread that every design has unless its maker says otherwise. */
export interface UsualSpread extends Spread, Cause {
  /** As in a sentence, without an article: "side clearance". */
  readonly name: string;
  readonly reach: Reach;
}

type Shape = Pick<Spread, 'kind' | 'relative' | 'size'>;

/** Evenly up to this far on both sides: the fitting shape where limits are all that is known (JCGM 101, 6.4.2). */
export const within = (size: number): Shape => ({ kind: 'uniform', relative: false, size });
export const withinShare = (size: number): Shape => ({ kind: 'uniform', relative: true, size });
export const around = (size: number): Shape => ({ kind: 'normal', relative: false, size });
export const aroundShare = (size: number): Shape => ({ kind: 'normal', relative: true, size });
/** For factors that are as likely half as double: the value is the middle one. */
export const skewed = (size: number): Shape => ({ kind: 'lognormal', relative: true, size });
export const pointed = (size: number): Shape => ({ kind: 'triangular', relative: false, size });
export const byTolerance: Shape = { kind: 'tolerance', relative: true, size: 0 };

/** Rows of the table that vary for one cause. */
export function becauseOf(
  cause: Cause,
  reach: Reach,
  rows: readonly (readonly [path: string, name: string, shape: Shape])[],
): UsualSpread[] {
  return rows.map(([path, name, shape]) => ({ path, name, reach, ...shape, ...cause }));
}
