import { type GapKey, presentGap_m } from '../../studies/gaps/gap.ts';
import { type GapLine, type GapQuestion, rowValues_m } from '../../studies/gaps/gapLine.ts';
import { type GoodGaps, goodGaps, type RangeEnd } from '../../studies/gaps/regions.ts';
import { type GapState, rank } from '../../studies/gaps/verdictChanges.ts';
import type { UnitSystem } from '../types.ts';
import { limitLabels, verdictWords } from '../wording.ts';
import { capital, kelvins, temperature } from '../words.ts';
import { whyNot } from './gapRows.ts';
import { boundSize, boxDoes, gapNames, gapSize, stepsOf } from './gapWords.ts';

/** As good as the coolest: nobody measures a film closer. */
export const asGood_K = 1;

/** What to cut, what it is worth, and what the baffle itself is worth. */
export function gapSentence(question: GapQuestion, line: GapLine, system: UnitSystem): string {
  const present_m = presentGap_m(question.design, question.gap);
  const good = goodGaps(line, present_m ?? line.coolest?.at_m ?? 0, asGood_K);
  const holds = good !== null && rank[good.span.state] > rank.fails;
  return [
    ...(holds
      ? [lead(question, good, present_m, system), beyond(line, good, system)]
      : [hopeless(question, line, system)]),
    withoutBaffle(line, line.coolest?.film_K ?? null, system),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

const verbs: Readonly<Record<GapKey, string>> = {
  sideClearance_m: 'Cut',
  slotWidth_m: 'Cut',
  endClearance_m: 'Cut',
  leakGap_m: 'Keep',
  standOff_m: 'Make',
};

function lead({ gap }: GapQuestion, good: GoodGaps, present_m: number | null, system: UnitSystem): string {
  const name = gapNames[gap];
  const { coolest, span } = good;
  const cool = temperature(coolest.film_K, system);
  if (isOpen(good.below) && isOpen(good.above)) {
    const all = `${gapSize(good.from_m, system)} to ${gapSize(good.to_m, system)}`;
    const spread_K = good.hottest_K - coolest.film_K;
    const film = spread_K < 0.05 ? `at ${cool}` : `within ${kelvins(spread_K, system, 1)} of ${cool}`;
    return `The ${name} hardly matters: anything from ${all} does, the film stays ${film} and ${boxDoes(span.state)}.`;
  }
  const isIn = present_m !== null && present_m >= good.from_m && present_m <= good.to_m;
  const now = isIn
    ? ', as it is now'
    : present_m === null
      ? ''
      : `, not ${gapSize(present_m, system)} as now`;
  return `${verbs[gap]} the ${name} ${rangeWords(good, system)}${now}: ${boxDoes(span.state)} and the film stays within ${kelvins(asGood_K, system)} of the coolest, ${cool} at ${gapSize(coolest.at_m, system, 2)}.`;
}

/** Nothing happens there: the values end. */
export function isOpen(end: RangeEnd): boolean {
  return end === 'curve' || end === 'room';
}

/** "0.8 mm or less", "3 mm or more", "between 0.4 mm and 2 mm". */
function rangeWords({ from_m, to_m, below, above }: GoodGaps, system: UnitSystem): string {
  const least = boundSize(from_m, 'up', system, below === 'film');
  const most = boundSize(to_m, 'down', system, above === 'film');
  if (below === 'room') return `${most} or less`;
  return above === 'room' ? `${least} or more` : `between ${least} and ${most}`;
}

/** What lies on both sides of the good gaps. */
function beyond(line: GapLine, good: GoodGaps, system: UnitSystem): string {
  const { span } = good;
  const over = line.changes.find(({ before_m }) => before_m === span.to_m)?.to;
  const under = line.changes.find(({ after_m }) => after_m === span.from_m)?.from;
  if (good.above === 'verdict' && good.below === 'verdict' && over && over === under)
    return `On both sides of that ${boxDoes(over)}.`;
  const side = (...parts: readonly string[]) => parts.filter((part) => part !== '').join(', and ');
  const parts = [
    side(
      good.above === 'film' ? costBeyond(line, good.to_m, 1, system) : '',
      over
        ? `${good.above === 'verdict' ? 'beyond that' : `from ${boundSize(span.to_m, 'up', system)} on`} ${boxDoes(over)}`
        : '',
    ),
    side(
      good.below === 'film' ? costBeyond(line, good.from_m, -1, system) : '',
      under
        ? `below ${good.below === 'verdict' ? 'that' : boundSize(span.from_m, 'up', system)} ${boxDoes(under)}`
        : '',
    ),
  ].filter((part) => part !== '');
  return parts.length === 0 ? '' : `${capital(parts.join('; '))}.`;
}

/** Kelvins a step, on average from the end of the good gaps to that of the curve. */
function costBeyond({ points }: GapLine, from_m: number, way: 1 | -1, system: UnitSystem): string {
  const curve = points.flatMap(({ at_m, trial }) =>
    trial.ok && (at_m - from_m) * way > 0 ? [{ at_m, film_K: trial.outputs.film_K }] : [],
  );
  const [near, far] = way > 0 ? [curve[0], curve.at(-1)] : [curve.at(-1), curve[0]];
  if (!near || !far || near === far) return '';
  const perMetre_K = (far.film_K - near.film_K) / Math.abs(far.at_m - near.at_m);
  const [fine, coarse] = stepsOf(system);
  const isSteep = perMetre_K * fine.step_m >= 0.2;
  const step = isSteep || Math.abs(far.at_m - near.at_m) < coarse.step_m ? fine : coarse;
  if (perMetre_K * step.step_m < 0.05) return '';
  return `each ${step.words} ${way > 0 ? 'more' : 'less'} costs about ${kelvins(perMetre_K * step.step_m, system, 1)}`;
}

function hopeless(question: GapQuestion, line: GapLine, system: UnitSystem): string {
  const name = gapNames[question.gap];
  const rows_m = rowValues_m(question);
  const all = `${gapSize(rows_m[0] ?? 0, system)} to ${gapSize(rows_m.at(-1) ?? 0, system)}`;
  const { coolest, points } = line;
  const at = points.find(({ at_m }) => at_m === coolest?.at_m)?.trial;
  if (coolest === null || !at?.ok) {
    const failed = points.map(({ trial }) => trial).find((trial) => !trial.ok);
    const why = failed && !failed.ok ? ` ${whyNot(question.design, failed, system)}` : '';
    return `No ${name} from ${all} comes to an answer.${why}`;
  }
  return `No ${name} from ${all} makes this box hold: even the coolest, ${gapSize(coolest.at_m, system, 2)} with the film at ${temperature(coolest.film_K, system)}, is too much for it (${limitLabels[at.limit].toLowerCase()}).`;
}

/** Less than this is nothing worth a baffle. */
const noDifference_K = 0.5;

/** @param coolest_K film of the best gap, for a design that has no baffle to compare with */
export function withoutBaffle(
  { none, present }: Pick<GapLine, 'none' | 'present'>,
  coolest_K: number | null,
  system: UnitSystem,
): string {
  if (!none.ok) return 'Without the baffle the box has no answer.';
  const with_K = present?.ok ? present.outputs.film_K : coolest_K;
  if (with_K === null) return '';
  const cost_K = none.outputs.film_K - with_K;
  const isNothing = Math.abs(cost_K) < noDifference_K;
  const size = kelvins(Math.abs(cost_K), system, Math.abs(cost_K) < 9.5 ? 1 : 0);
  if (present === null) {
    const film = isNothing ? 'as warm' : `${size} ${cost_K > 0 ? 'hotter' : 'cooler'}`;
    return `Now, without a baffle, the film is ${film} and ${boxDoes(none.state)}.`;
  }
  const does = isNothing ? 'changes next to nothing' : `${cost_K > 0 ? 'costs' : 'gains'} ${size}`;
  return `Leaving the baffle out ${does}, and ${then(none.state, present.ok ? present.state : 'noAnswer')}.`;
}

/** "the box still holds", "the box no longer holds". */
function then(now: GapState, before: GapState): string {
  if (now === 'fails') return `the box ${before === 'fails' ? 'does not hold either' : 'no longer holds'}`;
  return `the box ${now === before ? 'still' : 'then'} ${verdictWords[now]}`;
}
