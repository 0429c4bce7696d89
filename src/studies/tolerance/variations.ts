import { ordinaryRun, type SystemInput, unitFactors } from '../../core/system/input.ts';
import { type MethodScatter, methodScatter } from '../../core/system/methodScatter.ts';
import { trustOf } from '../../core/system/trust.ts';
import type { Design } from '../../model/design.ts';
import { type DesignSpread, spreadsInUse } from '../../model/spreads/spreads.ts';
import { tolerances } from '../../model/spreads/tolerances.ts';
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

/** @param input the design as the core is told of it */
export function variationsOf(design: Design, input: SystemInput): Variations {
  const spreads = spreadsInUse(design).filter(({ kind }) => kind !== 'none');
  const draft = draftOf(
    design,
    spreads.some(({ path }) => path === resistance),
  );
  stateDrawn(draft.design, spreads);
  const { used } = trustOf(input, ordinaryRun);
  const factors: Record<string, number> = { ...unitFactors };
  const list: Variation[] = [];
  const drawn: Drawn[] = [];
  for (const scatter of methodScatter(used)) {
    const place = { in: factors, key: scatter.factor, nominal: 1, low: 0, high: Number.POSITIVE_INFINITY };
    drawn.push({ of: list.length, kind: 'lognormal', size: scatter.sigma, relative: true, sets: [place] });
    list.push({ is: 'method', scatter });
  }
  const shared = spreads.filter(({ reach }) => reach === 'batch');
  for (const spread of shared) add(spread);
  const sharedCount = drawn.length;
  for (const spread of spreads) if (spread.reach !== 'batch') add(spread);
  return { list, draft, factors, drawn, shared: sharedCount, used };

  function add(spread: DesignSpread): void {
    const rows = placesOf(draft, design, spread.path, spread.reach === 'resistor');
    const draws = rows.flatMap(({ row, places }): Drawn[] => {
      const deviation = deviationOf(spread, design, row);
      return moves(deviation, places) ? [{ of: list.length, ...deviation, sets: places }] : [];
    });
    if (draws.length === 0) return;
    drawn.push(...draws);
    list.push({ is: 'input', spread });
  }
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
