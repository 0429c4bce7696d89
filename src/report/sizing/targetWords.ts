import type { Limit } from '../../core/system/outcome.ts';
import type { Design } from '../../model/design.ts';
import { wordProblem } from '../../model/wordProblem.ts';
import type { Standing, Stop } from '../../studies/sizing/standing.ts';
import type { Target } from '../../studies/sizing/target.ts';
import { quantity } from '../format.ts';
import { limitPlaces } from '../limitPlaces.ts';
import { limitClause, whereOf } from '../limitRows.ts';
import type { UnitSystem } from '../types.ts';
import { verdictReport } from '../verdictReport.ts';
import { limitLabels } from '../wording.ts';
import { kelvins, times } from '../words.ts';

/** What is asked of a box, as the beginning of a sentence about one that gives it. */
export function targetLead(target: Target, system: UnitSystem): string {
  switch (target.ask) {
    case 'spare':
      return `With ${times(target.spareFactor)} spare on every temperature rise`;
    case 'everyLimit':
      return `Kept ${asked(target.margin_K, system)} below every temperature limit`;
    case 'film':
      return `With its films kept ${asked(target.margin_K, system)} below their limit and every other limit held`;
  }
}

/** The same of one that does not. */
export function missLead(target: Target, system: UnitSystem): string {
  switch (target.ask) {
    case 'spare':
      return `As it is, the box lacks the ${times(target.spareFactor)} spare on every temperature rise`;
    case 'everyLimit':
      return `As it is, the box is not ${asked(target.margin_K, system)} below every temperature limit`;
    case 'film':
      return `As it is, the box does not keep its films ${asked(target.margin_K, system)} below their limit and hold every other`;
  }
}

function asked(margin_K: number, system: UnitSystem): string {
  return quantity(margin_K, 'temperatureDifference', system, 3);
}

/** What ends a measure, as a heading: "Derating line, resistor 5". */
export function stopTitle(stop: Stop, design: Design, system: UnitSystem): string {
  switch (stop.why) {
    case 'limit':
      return `${limitLabels[stop.limit.key]}, ${whereOf(stop.limit)}`;
    case 'clash':
      return wordProblem(stop.problem, system).replace(/\.$/, '');
    case 'noAnswer':
      return verdictReport(design, stop.unsolved, system).sentence.replace(/\.$/, '');
  }
}

/** What stands in the way of a target that is missed, as a clause: "the derating line (resistor 5) is 3.4 K short". */
export function shortClause(standing: Standing, target: Target, design: Design, system: UnitSystem): string {
  const { stop, left_K } = standing;
  if (stop.why !== 'limit') return lowered(stopTitle(stop, design, system));
  const { limit } = stop;
  if (limit.quantity !== 'temperature' || left_K === null) return limitClause(limit, design, system);
  return shortOf(limit, left_K, target, system);
}

/** The same of a limit that is a temperature. */
export function shortOf(limit: Limit, left_K: number, target: Target, system: UnitSystem): string {
  const name =
    limit.where === null ? limitPlaces[limit.key] : `${limitPlaces[limit.key]} (${whereOf(limit)})`;
  return target.ask === 'spare' && limit.loadFactor !== null
    ? `${name} lets the load grow to ${times(limit.loadFactor)} only`
    : `${name} is ${kelvins(Math.abs(left_K), system, 1)} short`;
}

/** The beginning of a sentence in the middle of one. */
export function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
