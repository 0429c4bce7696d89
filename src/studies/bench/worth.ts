import { solveDense } from '../../core/solve/denseSolve.ts';
import { rowOf } from './candidates.ts';
import type { Advised, Candidate, Unknown } from './types.ts';
import { believable, coverage, withinOf } from './unknowns.ts';

/** Readings named at most; nobody reads the end of a longer list. */
const mostAdvised = 6;
/** A reading that narrows the joint uncertainty by less than a tenth is not worth its wires. */
const leastGain = Math.log(1.2);
/** An unknown is told once its 95 % are as narrow as this: 5 %, or a twentieth of a millimetre. */
const enough = 0.05;

type Leaves = Advised['leaves'];

/** What is known of the unknowns asked for: an information matrix that begins with what one would believe of anything. */
export interface Knowledge {
  readonly asked: readonly Unknown[];
  readonly information: Float64Array;
}

/** @param rows of readings that are there, each over its standard uncertainty */
export function knowledgeFrom(asked: readonly Unknown[], rows: readonly (readonly number[])[]): Knowledge {
  const n = asked.length;
  const information = new Float64Array(n * n);
  for (let i = 0; i < n; i++) information[i * n + i] = (coverage / believable) ** 2;
  return rows.reduce(learnt, { asked, information });
}

function learnt({ asked, information }: Knowledge, row: readonly number[]): Knowledge {
  const n = asked.length;
  const more = information.map(
    (each, at) => each + (row[Math.floor(at / n)] as number) * (row[at % n] as number),
  );
  return { asked, information: more };
}

/** Uncertainties, 95 %; `null` where readings add little to what one would believe anyway. */
export function leavesOf({ asked, information }: Knowledge): Leaves {
  return Object.fromEntries(
    asked.map((unknown, i) => {
      const sigma = Math.sqrt(varianceAlong(information, unit(asked.length, i)));
      return [unknown, coverage * sigma > 0.9 * believable ? null : withinOf(unknown, sigma)];
    }),
  );
}

/**
 * Readings one by one, each the one that narrows the joint uncertainty of all unknowns most (the greatest determinant of
 * information, as D-optimal designs have it), until all are told or the next adds little.
 */
export function adviseMore(start: Knowledge, candidates: readonly Candidate[]): Advised[] {
  const advised: Advised[] = [];
  let known = start;
  let left = candidates;
  while (advised.length < mostAdvised && !isTold(known)) {
    const gains = left.map((each) => Math.log1p(varianceAlong(known.information, rowOf(each, known.asked))));
    const most = gains.reduce((a, b) => Math.max(a, b), 0);
    const best = left[gains.indexOf(most)];
    if (!best || most / 2 < leastGain) break;
    known = learnt(known, rowOf(best, known.asked));
    left = left.filter((each) => each !== best);
    advised.push({ candidate: best.id, leaves: leavesOf(known) });
  }
  return advised;
}

function isTold({ asked, information }: Knowledge): boolean {
  return asked.every(
    (_, i) => coverage * Math.sqrt(varianceAlong(information, unit(asked.length, i))) <= enough,
  );
}

/** wᵀ·M⁻¹·w: variance of a combination of the unknowns. */
function varianceAlong(information: Float64Array, way: readonly number[]): number {
  const moved = Float64Array.from(way);
  solveDense(information.slice(), moved, way.length);
  return way.reduce((sum, part, i) => sum + part * (moved[i] as number), 0);
}

function unit(n: number, at: number): number[] {
  return Array.from({ length: n }, (_, i) => Number(i === at));
}
