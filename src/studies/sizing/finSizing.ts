import type { Design } from '../../model/design.ts';
import type { Job } from '../job.ts';
import { bestHeight, coolestFirst } from './bestHeight.ts';
import { depthOf_m, type FinRules, type FinSet, finSets, heightInBox_m } from './finRules.ts';
import { type FinPoint, suppliesOf_V, tryFins } from './finTrial.ts';
import { frontOf } from './front.ts';
import { type Solve, standingOf, withoutPulses, withPulses } from './standing.ts';
import type { Target } from './target.ts';

export interface FinQuestion {
  readonly design: Design;
  readonly target: Target;
  readonly rules: FinRules;
}

export interface FinResult {
  /** The design as it is; `null` where it has no answer. */
  readonly now: FinPoint | null;
  /** The present fins at every supply looked at, the quietest first. */
  readonly nowOver: readonly FinPoint[];
  /** Whether the rules would allow the present fins. */
  readonly nowAllowed: boolean;
  /** Highest fins that go into the box. */
  readonly heightInBox_m: number;
  /** Sets looked at; nil where the rules leave none. */
  readonly sets: number;
  /** At the present supply, for every count the thickness and height that run coolest; coolest first. */
  readonly byCount: readonly FinPoint[];
  /** The coolest of all within the bounds on sound and pressure; `null` where nothing lies within them. */
  readonly pick: FinPoint | null;
  /** Film against sound, and film against fan pressure, the quietest and the slightest first: what nothing else beats in both. */
  readonly overSound: readonly FinPoint[];
  readonly overPressure: readonly FinPoint[];
}

type Piece =
  | { readonly now: readonly FinPoint[] }
  /** Coolest at the present supply, and what of all heights and supplies may belong to a front. */
  | { readonly best: FinPoint | null; readonly worth: readonly FinPoint[] };

/** The best fins within an envelope under the workshop's rules, and what quiet costs in kelvin. */
export const finSizingJob: Job<FinQuestion, Piece, FinResult> = {
  count: ({ design, rules }) => 1 + finSets(design, rules).length,
  piece: ({ design, target, rules }, index) => {
    const set = finSets(design, rules)[index - 1];
    const swing = design.load.duty < 1 ? standingOf(design, target, withPulses).swing : 1;
    if (set === undefined) return { now: presentOver(design, target, swing) };
    const { best, all } = searchSet(design, target, rules, set, withoutPulses, swing);
    return { best, worth: worthOf(all, rules) };
  },
  gather: ({ design, rules }, pieces) => {
    let nowOver: readonly FinPoint[] = [];
    const best: FinPoint[] = [];
    const worth: FinPoint[] = [];
    for (const piece of pieces) {
      if ('now' in piece) nowOver = piece.now;
      else {
        if (piece.best) best.push(piece.best);
        worth.push(...piece.worth);
      }
    }
    return {
      now: nowOver.find(({ supply_V }) => supply_V === design.fan.supply_V) ?? null,
      nowOver,
      nowAllowed: isAllowed(design, rules),
      heightInBox_m: heightInBox_m(design),
      sets: pieces.length - 1,
      byCount: coolestByCount(best),
      pick: coolestWithin(worth, rules),
      overSound: frontOf(worth, againstSound),
      overPressure: frontOf(worth, againstPressure),
    };
  },
};

/** Every height and supply of one set that the search looks at. */
export function searchSet(
  design: Design,
  target: Target,
  rules: FinRules,
  set: FinSet,
  solve: Solve,
  swing = 1,
): { best: FinPoint | null; all: readonly FinPoint[] } {
  const low_m = Math.min(rules.leastHeight_m, set.mostHeight_m);
  const bySupply = suppliesOf_V(design).map((supply_V) =>
    bestHeight(low_m, set.mostHeight_m, (height_m) =>
      tryFins(design, target, set, { height_m, supply_V }, solve, swing),
    ),
  );
  return { best: bySupply.at(-1)?.[0] ?? null, all: bySupply.flat() };
}

function againstSound({ sound_dBA, film_K }: FinPoint): readonly [number, number] {
  return [sound_dBA, film_K];
}

function againstPressure({ pressure_Pa, film_K }: FinPoint): readonly [number, number] {
  return [pressure_Pa, film_K];
}

function coolestWithin(
  points: readonly FinPoint[],
  { mostSound_dBA, mostPressure_Pa }: FinRules,
): FinPoint | null {
  const within = points.filter(
    ({ sound_dBA, pressure_Pa }) =>
      sound_dBA <= (mostSound_dBA ?? Number.POSITIVE_INFINITY) &&
      pressure_Pa <= (mostPressure_Pa ?? Number.POSITIVE_INFINITY),
  );
  return coolestFirst(within)[0] ?? null;
}

/** What of one set can be chosen or stand on a front, whatever the other sets do. */
function worthOf(all: readonly FinPoint[], rules: FinRules): FinPoint[] {
  const fronts = [...frontOf(all, againstSound), ...frontOf(all, againstPressure)];
  const coolest = coolestWithin(all, rules);
  return [...new Set(coolest ? [...fronts, coolest] : fronts)];
}

function coolestByCount(points: readonly FinPoint[]): FinPoint[] {
  const seen = new Set<number>();
  return coolestFirst(points).filter(({ count }) => !seen.has(count) && seen.add(count));
}

function setOf({ sink }: Design): FinSet {
  const { finCount: count, finThickness_m: thickness_m, width_m, finHeight_m } = sink;
  const gap_m = (width_m - count * thickness_m) / (count - 1);
  return { count, thickness_m, gap_m, mostHeight_m: finHeight_m };
}

/** The present fins at every supply. */
function presentOver(design: Design, target: Target, swing: number): FinPoint[] {
  const height_m = design.sink.finHeight_m;
  return suppliesOf_V(design).flatMap(
    (supply_V) => tryFins(design, target, setOf(design), { height_m, supply_V }, withoutPulses, swing) ?? [],
  );
}

function isAllowed(design: Design, rules: FinRules): boolean {
  const { gap_m, thickness_m, mostHeight_m: height_m } = setOf(design);
  const depth_m = depthOf_m(gap_m, rules.cutters_m, rules.depthRatio);
  return height_m <= depth_m * (1 + 1e-9) && thickness_m >= rules.leastThickness_m * (1 - 1e-9);
}
