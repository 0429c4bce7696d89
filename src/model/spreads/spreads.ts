import type { Design } from '../design.ts';
import { fieldAt, fields } from '../fields.ts';
import { cuts } from './cuts.ts';
import { feeds } from './feeds.ts';
import { isRead } from './isRead.ts';
import { mayVary } from './mayVary.ts';
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

/** What varies there, as in a sentence. */
export function spreadName(path: string): string {
  return usualSpread(path)?.name ?? `${fieldAt(path).label.toLowerCase()}${wherePlaced(path)}`;
}

/** Of what: labels like "Length" alone would not tell. */
const owners: Readonly<Record<string, string>> = {
  parts: 'resistors',
  positions: 'resistors',
  sink: 'sinks',
  bond: 'bond',
  secondFace: 'second face',
  fan: 'fan',
  moreFans: 'other fans',
  inlet: 'inlet',
  outlet: 'outlet',
  plenum: 'plenum',
  baffle: 'baffle',
  box: 'box',
  extras: 'extra losses',
  room: 'room',
  load: 'load',
};

function wherePlaced(path: string): string {
  const owner = owners[/^\w+/.exec(path)?.[0] ?? ''];
  return owner === undefined ? '' : `, ${owner}`;
}

/** Inputs of a design that have no spread yet and might have one, in the order of the form. */
export function furtherVariables(design: Design): string[] {
  const taken = new Set(spreadsOf(design).map(({ path }) => path));
  return fields
    .map(({ pattern }) => pattern)
    .filter((path) => mayVary(path) && !taken.has(path) && isRead(design, path));
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
    name: spreadName(path),
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
