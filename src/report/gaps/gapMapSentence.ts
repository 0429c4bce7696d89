import { type GapKey, presentGap_m } from '../../studies/gaps/gap.ts';
import type { GapMap, GapMapQuestion, GapNode } from '../../studies/gaps/gapMap.ts';
import { type Reserve, stateOfReserve } from '../../studies/gaps/reserve.ts';
import { type GapState, rank } from '../../studies/gaps/verdictChanges.ts';
import type { UnitSystem } from '../types.ts';
import { capital, kelvins, listed, temperature } from '../words.ts';
import { withoutBaffle } from './gapSentence.ts';
import { boundSize, boxDoes, gapNames, gapSize } from './gapWords.ts';

/** Which pairs to cut, which gap weighs more, and what the baffle itself is worth. */
export function gapMapSentence(question: GapMapQuestion, map: GapMap, system: UnitSystem): string {
  const coolest = coolestPair(map);
  if (coolest === null) return 'No pair of these gaps comes to an answer.';
  return [
    verdictWords(question, map, system),
    coolestWords(question, coolest, system),
    weightWords(question, map, system),
    withoutBaffle(map, coolest.film_K, system),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

interface Pair {
  readonly x_m: number;
  readonly y_m: number;
  readonly film_K: number;
}

function coolestPair({ xs, ys, nodes }: GapMap): Pair | null {
  let coolest: Pair | null = null;
  nodes.forEach((line, row) => {
    line.forEach((node, column) => {
      if (!node.ok || (coolest && node.outputs.film_K >= coolest.film_K)) return;
      coolest = { x_m: xs[column]?.at_m ?? 0, y_m: ys[row]?.at_m ?? 0, film_K: node.outputs.film_K };
    });
  });
  return coolest;
}

/** Where along three lines of the map the best verdict on it stands. */
function verdictWords({ design, x, y }: GapMapQuestion, map: GapMap, system: UnitSystem): string {
  const states = new Set(map.nodes.flat().flatMap((node) => nodeState(node) ?? []));
  const best = [...states].reduce((a, b) => (rank[b] > rank[a] ? b : a));
  if (rank[best] <= rank.fails) return 'No pair on this map makes the box hold.';
  if (states.size === 1) return `Any pair on this map does: ${boxDoes(best)}.`;
  const present_m = presentGap_m(design, y.gap);
  const here = map.ys.findIndex(({ at_m }) => at_m === present_m);
  const rows = [...new Set([0, here >= 0 ? here : Math.floor(map.ys.length / 2), map.ys.length - 1])];
  const parts = rows.flatMap((row) => {
    const at_m = map.ys[row]?.at_m ?? 0;
    const line = map.nodes[row];
    const now = at_m === present_m ? ' (now)' : '';
    return line ? [`with ${gapSize(at_m, system)}${now} ${alongWords(line, map, best, system)}`] : [];
  });
  return `${capital(boxDoes(best))} over part of this map. By ${gapNames[y.gap]}: ${listed(parts)} of ${gapNames[x.gap]}.`;
}

/** `null` for what cannot be built. */
function nodeState(node: GapNode): GapState | null {
  if (node.ok) return stateOfReserve(node.reserve);
  return node.problem === null ? 'noAnswer' : null;
}

/** "up to 9.7 mm", "2 mm or more", "no value". */
function alongWords(line: readonly GapNode[], { xs }: GapMap, best: GapState, system: UnitSystem): string {
  const states = line.map(nodeState);
  const isBest = (state: GapState | null) => state !== null && rank[state] >= rank[best];
  const first = states.findIndex(isBest);
  const last = states.findLastIndex(isBest);
  if (first < 0) return 'no value';
  const of = (reserve: Reserve) => (best === 'holds' ? reserve.toLittle : reserve.toFail);
  const edge = (inner: number, outer: number): number | null => {
    if (states[outer] === undefined || states[outer] === null) return null;
    const [here_m, there_m] = [xs[inner]?.at_m ?? 0, xs[outer]?.at_m ?? 0];
    const [here, there] = [line[inner], line[outer]];
    if (!here?.ok || !there?.ok) return here_m;
    const [from, to] = [of(here.reserve), of(there.reserve)];
    return here_m + (from / (from - to)) * (there_m - here_m);
  };
  const [least_m, most_m] = [edge(first, first - 1), edge(last, last + 1)];
  const least = least_m === null ? null : boundSize(least_m, 'up', system, true);
  const most = most_m === null ? null : boundSize(most_m, 'down', system, true);
  if (least === null) return most === null ? 'any value' : `up to ${most}`;
  return most === null ? `${least} or more` : `${least} to ${most}`;
}

function coolestWords({ x, y }: GapMapQuestion, { x_m, y_m, film_K }: Pair, system: UnitSystem): string {
  return `The coolest pair is ${gapSize(x_m, system)} of ${gapNames[x.gap]} with ${gapSize(y_m, system)} of ${gapNames[y.gap]}: the film at ${temperature(film_K, system, 1)}.`;
}

/** Kelvins that each gap moves the film by, the other one as it is now or in the middle. */
function weightWords({ design, x, y }: GapMapQuestion, map: GapMap, system: UnitSystem): string {
  const rowAt = (gap: GapKey, lines: GapMap['xs']) => {
    const at = lines.findIndex(({ at_m }) => at_m === presentGap_m(design, gap));
    return at >= 0 ? at : Math.floor(lines.length / 2);
  };
  const column = rowAt(x.gap, map.xs);
  const overX_K = spread_K(map.nodes[rowAt(y.gap, map.ys)] ?? []);
  const overY_K = spread_K(map.nodes.flatMap((line) => line[column] ?? []));
  const [more, less] = overX_K >= overY_K ? [x.gap, y.gap] : [y.gap, x.gap];
  const [most_K, least_K] = [Math.max(overX_K, overY_K), Math.min(overX_K, overY_K)];
  return `Of the two, the ${gapNames[more]} weighs more: over its range it moves the film by ${kelvins(most_K, system, 1)}, the ${gapNames[less]} by ${kelvins(least_K, system, 1)}.`;
}

function spread_K(nodes: readonly GapNode[]): number {
  const films = nodes.flatMap((node) => (node.ok ? [node.outputs.film_K] : []));
  return films.length === 0 ? 0 : Math.max(...films) - Math.min(...films);
}
