import { ordinaryRun } from '../../core/system/input.ts';
import type { LimitKey } from '../../core/system/outcome.ts';
import { solveSystem } from '../../core/system/solveSystem.ts';
import type { Design } from '../../model/design.ts';
import { toCore } from '../../model/toCore.ts';
import type { Job } from '../job.ts';
import { withValues } from '../vary.ts';
import type { Change, Settings } from './change.ts';
import { changesOf } from './changesOf.ts';
import { bestApart, byGain, countedLimit, gainOf, isLouder, type Together, type Tried } from './tried.ts';
import { type Weighed, weigh } from './weigh.ts';

export interface ChangesQuestion {
  readonly design: Design;
}

export interface ChangesResult {
  /** The design as it is. */
  readonly before: Weighed;
  /** The limit whose kelvin rank the changes; `null`: the hottest film. */
  readonly limit: LimitKey | null;
  /** Every change that applies, the best first. */
  readonly tried: readonly Tried[];
  /** The best two at once, then the best three; empty in an estimate. */
  readonly together: readonly Together[];
}

type Piece =
  | { readonly before: Weighed }
  | { readonly tried: readonly (Change & { readonly after: Weighed })[] };

/** Everything that could be done to a design, each thing tried by itself, ranked by the kelvin it gains. */
export const changesJob: Job<ChangesQuestion, Piece, ChangesResult | null> = {
  count: ({ design }) => 1 + Math.ceil(changesAt(design).length / lotSize(design)),
  piece: ({ design }, index) => {
    if (index === 0) return { before: weigh(design) };
    const lot = lotSize(design);
    const changes = changesAt(design).slice((index - 1) * lot, index * lot);
    return { tried: changes.map((change) => ({ ...change, after: tryChange(design, change) })) };
  },
  gather: ({ design }, pieces) => {
    const before = pieces.find((piece) => 'before' in piece)?.before;
    if (before === undefined) return null;
    const tried = pieces
      .flatMap((piece) => ('tried' in piece ? piece.tried : []))
      .map((each) => withGain(before, each))
      .sort(byGain);
    const isWhole = pieces.length === changesJob.count({ design });
    return {
      before,
      limit: countedLimit(before),
      tried,
      together: isWhole ? together(design, before, tried) : [],
    };
  },
};

/** Changes a piece: a handful of solves, or one that follows the pulses. */
function lotSize({ load }: Design): number {
  return load.duty < 1 ? 1 : 5;
}

/** Which resistor is hottest does not turn on its pulses. */
function changesAt(design: Design): Change[] {
  const outcome = solveSystem(toCore(design), { ...ordinaryRun, pulses: false });
  return changesOf(design, outcome.ok ? outcome.heat : null);
}

/** What cannot be cut is weighed all the same: it may be bought. */
function tryChange(design: Design, { values }: Change): Weighed {
  return weigh(withValues(design, values));
}

function withGain(before: Weighed, each: Change & { readonly after: Weighed }): Tried {
  const gain = gainOf(before, each.after);
  const costs = isLouder({ gain }) ? [...each.costs, 'louder' as const] : each.costs;
  return { ...each, costs, gain };
}

/** The best two and the best three that do not touch the same inputs. */
function together(design: Design, before: Weighed, tried: readonly Tried[]): Together[] {
  const best = bestApart(tried, 3);
  return [2, 3].flatMap((count) =>
    best.length < count ? [] : [atOnce(design, before, best.slice(0, count))],
  );
}

function atOnce(design: Design, before: Weighed, changes: readonly Tried[]): Together {
  const values: Settings = Object.assign({}, ...changes.map((change) => change.values));
  const after = weigh(withValues(design, values));
  const sum_K = changes.reduce((sum, { gain }) => sum + (gain?.limit_K ?? 0), 0);
  return { changes, values, after, gain: gainOf(before, after), sum_K };
}
