import type { Design } from '../model/design.ts';
import { fieldAt } from '../model/fields.ts';
import { getAt } from '../model/path.ts';
import {
  type Dimension,
  editIn,
  parseIn,
  sayRange,
  type UnitSystem,
  unitFor,
  unitSymbol,
} from '../model/say.ts';
import { sizeDimension, statedTolerance } from '../model/spreads/sizes.ts';
import { usualSpread } from '../model/spreads/spreads.ts';
import { tolerances } from '../model/spreads/tolerances.ts';
import type { Spread, SpreadKind } from '../model/spreads/usualSpread.ts';

/** What the design says there, the first row of a list; `null` where it has none. */
export function nominalOf(design: Design, path: string): number | null {
  const value = getAt(design, path.replaceAll('[]', '[0]'));
  return typeof value === 'number' ? value : null;
}

/** Shapes that the spread of an input may have; a tolerance only where the design states one. */
export function shapesFor(path: string): SpreadKind[] {
  const all: SpreadKind[] = ['none', 'normal', 'lognormal', 'uniform', 'triangular'];
  return Object.hasOwn(tolerances, path) ? [...all, 'tolerance'] : all;
}

/** Whether a spread has a size of its own to type. */
export function isSized({ kind }: Pick<Spread, 'kind'>): boolean {
  return kind !== 'none' && kind !== 'tolerance';
}

/** Where nothing tells a size. */
const someShare = 0.05;
/** A skewed spread may be wider: half as likely as double. */
const mostShare = { lognormal: 2, other: 1 } as const;

/** The same spread with another shape, as wide as it was, or as its input usually is. @param nominal what the design says there */
export function withShape(spread: Spread, kind: SpreadKind, design: Design, nominal: number | null): Spread {
  if (!isSized({ kind }))
    return { ...spread, kind, ...(kind === 'tolerance' ? { relative: true, size: 0 } : {}) };
  const sized = spread.size > 0 ? spread : firstSize(spread, design);
  if (kind !== 'lognormal' || sized.relative) return { ...sized, kind };
  const share = nominal === null || nominal === 0 ? someShare : sized.size / Math.abs(nominal);
  return {
    ...sized,
    kind,
    relative: true,
    size: Number(Math.min(share, mostShare.lognormal).toPrecision(2)),
  };
}

function firstSize(spread: Spread, design: Design): Spread {
  const usual = usualSpread(spread.path);
  if (usual && usual.size > 0) return { ...spread, relative: usual.relative, size: usual.size };
  return { ...spread, relative: true, size: statedTolerance(design, spread.path)[1] || someShare };
}

export interface SizeBox {
  readonly text: string;
  /** Symbol of the unit that a bare number is in. */
  readonly unit: string;
  /** What may stand there, in a sentence. */
  readonly allowed: string;
}

/** The size as somebody would type it. */
export function sizeBox(spread: Spread, system: UnitSystem): SizeBox {
  const dimension = sizeDimension(spread);
  const unit = unitFor(dimension, system);
  return {
    text: editIn(spread.size, dimension, unit),
    unit: unitSymbol(dimension, unit),
    allowed: allowedSize(spread, system),
  };
}

export type SizeRead =
  | { readonly ok: true; readonly spread: Spread }
  | { readonly ok: false; readonly reason: string };

/** A size as typed: in the unit of the input, or with % as a share of its value, where its shape takes that. */
export function readSize(text: string, spread: Spread, system: UnitSystem): SizeRead {
  let first: string | null = null;
  for (const way of waysToRead(spread)) {
    const read = parseIn(text, sizeDimension(way), undefined, system);
    if (!read.ok) {
      first ??= read.reason;
      continue;
    }
    const size = Number(read.value.toPrecision(15));
    const [low, high] = sizeLimits(way);
    if (size > low && size <= high) return { ok: true, spread: { ...way, size } };
    return { ok: false, reason: `Out of bounds. ${allowedSize(way, system)}` };
  }
  return { ok: false, reason: first ?? 'Nothing stands here.' };
}

/** As it is first, so that a bare number keeps its unit; then the other way round. */
function waysToRead(spread: Spread): Spread[] {
  const isShareOnly = spread.kind === 'lognormal' || spread.path.includes('curve[]');
  if (isShareOnly) return [{ ...spread, relative: true }];
  const own = sizeDimension({ ...spread, relative: false });
  return own === 'ratio' ? [spread] : [spread, { ...spread, relative: !spread.relative }];
}

function sizeLimits(spread: Spread): readonly [low: number, high: number] {
  const field = fieldAt(spread.path);
  if (spread.kind === 'lognormal') return [0, mostShare.lognormal];
  if (spread.relative || field.kind !== 'quantity') return [0, mostShare.other];
  return [0, field.hard[1] - field.hard[0]];
}

function allowedSize(spread: Spread, system: UnitSystem): string {
  const dimension: Dimension = sizeDimension(spread);
  const range = sayRange(sizeLimits(spread), dimension, system);
  return `Allowed is more than nothing, ${range}${dimension === 'ratio' ? '' : ', or a share in %'}.`;
}
