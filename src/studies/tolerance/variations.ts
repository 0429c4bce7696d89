import { ordinaryRun, type SystemInput } from '../../core/system/input.ts';
import { type MethodScatter, methodScatter } from '../../core/system/methodScatter.ts';
import { systemCards } from '../../core/system/methods.ts';
import { trustOf } from '../../core/system/trust.ts';
import type { Design } from '../../model/design.ts';
import { type DesignSpread, spreadsInUse } from '../../model/spreads/spreads.ts';
import { tolerances } from '../../model/spreads/tolerances.ts';
import { fittedSigmas } from '../bench/fittedSigmas.ts';
import { type Draft, draftOf } from './draft.ts';
import { type Place, placesOf } from './places.ts';
import type { Deviation } from './variate.ts';

/** One number of the unit cube and what it sets. */
export interface Drawn extends Deviation {
  /** Which variation it belongs to. */
  readonly of: number;
  /** Places of the draft, or the factor of a method. */
  readonly sets: readonly Place[];
}

/** One thing that varies, by one draw or, for what differs from resistor to resistor, by several. */
export type Variation =
  | { readonly is: 'input'; readonly spread: DesignSpread }
  | { readonly is: 'method'; readonly scatter: MethodScatter };

/** All that varies in one design, ready to be drawn. */
export interface Variations {
  readonly list: readonly Variation[];
  readonly draft: Draft;
  /** Written by draws of methods. */
  readonly factors: Record<string, number>;
  /** What all boxes of a batch share comes first. */
  readonly drawn: readonly Drawn[];
  readonly shared: number;
  /** Ids of the cards that the answer of the design as drawn rests on. */
  readonly used: readonly string[];
}

const resistance = 'parts[].R_Ohm';

/**
 * @param input the design as the core is told of it
 * @param methods whether they scatter too
 */
export function variationsOf(design: Design, input: SystemInput, methods: boolean): Variations {
  const spreads = spreadsInUse(design).filter(({ kind }) => kind !== 'none');
  const draft = draftOf(
    design,
    spreads.some(({ path }) => path === resistance),
  );
  stateDrawn(draft.design, spreads);
  const factors: Record<string, number> = { ...input.factors };
  const used = cardsUsed(input);
  const inputs = (isShared: boolean) =>
    spreads
      .filter(({ reach }) => (reach === 'batch') === isShared)
      .map((spread) => ({
        variation: { is: 'input', spread } as Variation,
        draws: inputDraws(spread, draft, design),
      }));
  const scatter = methods ? methodScatter(used, fittedSigmas(design)) : [];
  const alone = scatter.map((each) => ({
    variation: { is: 'method', scatter: each } as Variation,
    draws: [methodDraw(each, factors)],
  }));
  const shared = [...inputs(true), ...alone].filter(({ draws }) => draws.length > 0);
  const all = [...shared, ...inputs(false).filter(({ draws }) => draws.length > 0)];
  return {
    list: all.map(({ variation }) => variation),
    draft,
    factors,
    drawn: all.flatMap(({ draws }, of) => draws.map((draw) => ({ ...draw, of }))),
    shared: shared.reduce((sum, { draws }) => sum + draws.length, 0),
    used,
  };
}

/** Cards that the design's answer rests on; without an answer, all that one could rest on. */
function cardsUsed(input: SystemInput): readonly string[] {
  const { used } = trustOf(input, ordinaryRun);
  return used.length > 0 ? used : systemCards.map(({ id }) => id);
}

type Draw = Omit<Drawn, 'of'>;

/** About the factor of the box: 1, or what was fitted to readings. */
function methodDraw({ factor, sigma }: MethodScatter, factors: Record<string, number>): Draw {
  const place = {
    in: factors,
    key: factor,
    nominal: factors[factor] as number,
    low: 0,
    high: Number.POSITIVE_INFINITY,
  };
  return { kind: 'lognormal', size: sigma, relative: true, sets: [place] };
}

function inputDraws(spread: DesignSpread, draft: Draft, design: Design): Draw[] {
  return placesOf(draft, design, spread.path, spread.reach === 'resistor').flatMap(({ row, places }) => {
    const deviation = deviationOf(spread, design, row);
    return moves(deviation, places) ? [{ ...deviation, sets: places }] : [];
  });
}

/** What is drawn is not taken at the worst of its tolerance besides. */
function stateDrawn(draft: Design, spreads: readonly DesignSpread[]): void {
  const has = (...paths: string[]) => spreads.some(({ path }) => paths.includes(path));
  if (has(resistance)) for (const part of draft.parts) part.tolerance = 0;
  if (has('load.supply_V', 'load.supply_A')) draft.load.supplyTolerance = 0;
}

function deviationOf({ path, kind, relative, size }: DesignSpread, design: Design, row: number): Deviation {
  if (kind !== 'tolerance') return { kind, relative, size };
  const tolerance = tolerances[path]?.(design, row) ?? 0;
  return { kind, relative: true, size: tolerance };
}

/** A share of nothing is nothing: a leak that is not there does not vary by a tenth. */
function moves({ size, relative }: Deviation, places: readonly Place[]): boolean {
  return size > 0 && (!relative || places.some(({ nominal }) => nominal !== 0));
}
