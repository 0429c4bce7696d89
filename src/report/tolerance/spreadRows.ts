import { sources } from '../../core/sources.ts';
import type { Factors } from '../../core/system/input.ts';
import { type FittedSigmas, scatterCards } from '../../core/system/methodScatter.ts';
import type { Design } from '../../model/design.ts';
import { getAt } from '../../model/path.ts';
import { sizeDimension, statedTolerance } from '../../model/spreads/sizes.ts';
import {
  type DesignSpread,
  furtherVariables,
  spreadName,
  spreadsInUse,
} from '../../model/spreads/spreads.ts';
import type { Cause, Reach, Spread } from '../../model/spreads/usualSpread.ts';
import type { Amounts, Said } from '../amount.ts';
import { quantity } from '../format.ts';
import { table, told } from '../makeTable.ts';
import { saidAs, withAmounts } from '../said.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { originWords } from '../wording.ts';
import { capital, share } from '../words.ts';
import { factorWords } from './toleranceWords.ts';

/** One input that may vary, in words. */
export interface SpreadRow {
  readonly spread: DesignSpread;
  readonly label: string;
  readonly shape: string;
  readonly size: string;
  readonly reach: string;
  /** Why, and from where its size is known. */
  readonly source: string;
  /** The usual spread in words where this one is the reader's own; empty otherwise. */
  readonly usual: string;
  readonly amounts: Amounts<'size'>;
}

/** Inputs that have no spread yet, by name. */
export function furtherInputs(design: Design): { readonly path: string; readonly label: string }[] {
  return furtherVariables(design)
    .map((path) => ({ path, label: capital(spreadName(path)) }))
    .sort((a, b) => a.label.localeCompare(b.label));
}

/** The factor of a method: its scatter is its card's, and nobody's to change. */
export type MethodSpreadRow = Pick<SpreadRow, 'label' | 'shape' | 'size' | 'reach' | 'source' | 'amounts'>;

export const shapeWords: Readonly<Record<Spread['kind'], string>> = {
  none: 'none',
  normal: 'normal',
  lognormal: 'skewed',
  uniform: 'even',
  triangular: 'triangular',
  tolerance: 'by tolerance',
};

const reachWords: Readonly<Record<Reach, string>> = {
  resistor: 'each resistor',
  box: 'each box',
  batch: 'the batch',
};

/** Every spread of the design whose input it reads, in the order of their table. */
export function spreadRows(design: Design, system: UnitSystem): SpreadRow[] {
  return spreadsInUse(design).map((spread) => ({
    spread,
    label: capital(spread.name),
    shape: shapeWords[spread.kind],
    ...withAmounts({ size: saidSize(design, spread, system) }),
    reach: isIdle(design, spread) ? 'nothing while the value is 0' : reachWords[spread.reach],
    source: spread.own ? 'your own' : sourceOf(spread),
    usual: spread.own ? usualWords(design, spread, system) : '',
  }));
}

/** @param fitted what readings leave open of a factor, in place of its card’s scatter */
export function methodSpreadRows(
  factors: readonly (keyof Factors)[],
  fitted: FittedSigmas,
): MethodSpreadRow[] {
  return factors.map((factor) => {
    const { title, scatter } = scatterCards[factor];
    const known = fitted[factor];
    const sigma = known ?? scatter.sigma ?? 0;
    return {
      label: `Method for ${factorWords[factor]}`,
      shape: shapeWords.lognormal,
      ...withAmounts({ size: saidAs(`σ ${share(sigma)}`, sigma, 'ratio', 'metric') }),
      reach: reachWords.batch,
      source:
        known === undefined
          ? `card “${title}”; ${originWords[scatter.from]}`
          : 'fitted to readings of a prototype; what they leave open',
    };
  });
}

/** A share of nothing is nothing. */
function isIdle(design: Design, { path, relative, kind }: DesignSpread): boolean {
  return kind !== 'none' && relative && getAt(design, path) === 0;
}

function sourceOf({ usual, kind }: DesignSpread): string {
  if (usual === null) return 'your own';
  const from = kind === 'tolerance' ? 'stated in the design' : causeSource(usual);
  return `${usual.because}; ${from}`;
}

function causeSource({ source }: Cause): string {
  if (source === 'assumption') return 'assumption';
  return source === 'commonPractice' ? 'common practice, no source' : sources[source].cite;
}

function usualWords(design: Design, { usual }: DesignSpread, system: UnitSystem): string {
  if (usual === null) return 'usually none';
  const size = sizeText(design, usual, system);
  return `usually ${shapeWords[usual.kind]}${size === '' ? '' : `, ${size}`}`;
}

function saidSize(design: Design, spread: Spread, system: UnitSystem): Said {
  const text = sizeText(design, spread, system);
  if (spread.kind === 'tolerance')
    return { text, value: 100 * statedTolerance(design, spread.path)[1], unit: '%' };
  return saidAs(text, spread.kind === 'none' ? null : spread.size, sizeDimension(spread), system);
}

/** "±0.2 mm" for what has ends, "σ 0.1 mm" for what has none; empty where nothing varies. */
export function sizeText(design: Design, spread: Spread, system: UnitSystem): string {
  const { kind, size, path } = spread;
  switch (kind) {
    case 'none':
      return '';
    case 'tolerance': {
      const [low, high] = statedTolerance(design, path);
      const most = low === high ? share(high) : `${share(low)} to ${share(high)}`;
      return path === 'fan.supplySag' ? `up to ${most} less` : `±${most}`;
    }
    default: {
      const dimension = sizeDimension(spread);
      const text = dimension === 'ratio' ? share(size) : quantity(size, dimension, system);
      return kind === 'uniform' || kind === 'triangular' ? `±${text}` : `σ ${text}`;
    }
  }
}

/** Below the inputs, the methods whose scatter was drawn. */
export function spreadsTable(
  rows: readonly SpreadRow[],
  methods: readonly MethodSpreadRow[] = [],
): TextTable {
  return table(
    'spreads',
    'What varies, and how far',
    ['Input', 'Shape', '>Size', 'Drawn for', 'Why and from where'],
    [...rows, ...methods].map((row) => [row.label, row.shape, ...told(row, 'size'), row.reach, row.source]),
  );
}
