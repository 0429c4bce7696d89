import type { Design } from '../design.ts';
import { fieldAt } from '../fields.ts';
import { cuts } from './cuts.ts';
import { feeds } from './feeds.ts';
import { isRead } from './isRead.ts';
import { stuffs } from './stuffs.ts';
import type { Reach, Spread, UsualSpread } from './usualSpread.ts';

/**
 * What varies in every box unless its maker says otherwise. Every number is an ordinary one to begin with, not a promise.
 * What is likely to matter stands first: the first numbers of a quasi-random sequence are spread best.
 */
export const usualSpreads: readonly UsualSpread[] = [...stuffs, ...feeds, ...cuts];

const usualByPath = new Map(usualSpreads.map((spread) => [spread.path, spread]));

export function usualSpread(path: string): UsualSpread | null {
  return usualByPath.get(path) ?? null;
}

/** A spread as a design has it. */
export interface DesignSpread extends Spread {
  readonly name: string;
  readonly reach: Reach;
  /** The usual one of this input; `null` where inputs of its kind do not vary as a rule. */
  readonly usual: UsualSpread | null;
  /** The reader's own, which differs from the usual one. */
  readonly own: boolean;
}

/** Usual spreads in the order of their table with the reader's own in their places, then what only the reader lets vary. */
export function spreadsOf({ spreads }: Design): DesignSpread[] {
  const own = new Map(spreads.map((spread) => [spread.path, spread]));
  const further = spreads.filter(({ path }) => !usualByPath.has(path));
  return [
    ...usualSpreads.map((usual) => described(own.get(usual.path) ?? usual, usual, own.has(usual.path))),
    ...further.map((spread) => described(spread, null, true)),
  ];
}

/** The same without those of inputs that this design does not read. */
export function spreadsInUse(design: Design): DesignSpread[] {
  return spreadsOf(design).filter(({ path }) => isRead(design, path));
}

function described(
  { path, kind, relative, size }: Spread,
  usual: UsualSpread | null,
  own: boolean,
): DesignSpread {
  return {
    path,
    kind,
    relative,
    size,
    name: usual?.name ?? fieldAt(path).label.toLowerCase(),
    reach: usual?.reach ?? (path.startsWith('positions') ? 'resistor' : 'box'),
    usual,
    own,
  };
}

/** The design's own rows with this one in; without it where it is the usual one. */
export function withSpread(design: Design, spread: Spread): Design['spreads'] {
  const { path, kind, relative, size } = spread;
  const rest = design.spreads.filter((other) => other.path !== path);
  const usual = usualSpread(path);
  const same =
    usual !== null &&
    usual.kind === kind &&
    (kind === 'none' || kind === 'tolerance' || (usual.relative === relative && usual.size === size));
  return same || (usual === null && kind === 'none') ? rest : [...rest, { path, kind, relative, size }];
}
