import { wordProblem } from '../../model/wordProblem.ts';
import { presentGap_m } from '../../studies/gaps/gap.ts';
import type { GapLine, GapQuestion } from '../../studies/gaps/gapLine.ts';
import { type GoodGaps, goodGaps } from '../../studies/gaps/regions.ts';
import type { VerdictChange } from '../../studies/gaps/verdictChanges.ts';
import type { UnitSystem } from '../types.ts';
import { limitLabels, verdictWords } from '../wording.ts';
import { fixed, kelvins, temperature } from '../words.ts';
import { bandWords } from './gapRows.ts';
import { asGood_K, isOpen } from './gapSentence.ts';
import { boundSize, gapSize, stepsOf } from './gapWords.ts';

/** What stands behind the sentence, one thought each. */
export function gapRemarks(question: GapQuestion, line: GapLine, system: UnitSystem): string[] {
  const present_m = presentGap_m(question.design, question.gap);
  const good = goodGaps(line, present_m ?? line.coolest?.at_m ?? 0, asGood_K);
  return [
    ...(present_m === null ? [] : presentRemark(question, line, present_m, system)),
    ...(good === null ? [] : aimRemark(question, good, system)),
    ...kneeRemark(line, system),
    ...line.changes.map((change) => changeRemark(change, system)),
    ...clashRemarks(line, system),
    ...(question.design.load.duty < 1
      ? ['The load comes and goes: films are told at its mean, verdicts count the pulses.']
      : []),
  ];
}

function presentRemark(
  { cut_m }: GapQuestion,
  { present, points, slope_KPerM }: GapLine,
  present_m: number,
  system: UnitSystem,
): string[] {
  if (!present?.ok) return [];
  const { film_K, filmMargin_K } = present.outputs;
  const side = filmMargin_K < 0 ? 'above' : 'below';
  const band_K = points.find(({ at_m }) => at_m === present_m)?.band_K;
  const off = band_K
    ? ` A cut that misses by ${gapSize(cut_m, system)} leaves it at ${bandWords(band_K, system)}.`
    : '';
  return [
    `Now ${gapSize(present_m, system)}: the film is at ${temperature(film_K, system, 1)}, ${kelvins(Math.abs(filmMargin_K), system, 1)} ${side} its limit${slopeWords(slope_KPerM, system)}.${off}`,
  ];
}

function slopeWords(slope_KPerM: number | null, system: UnitSystem): string {
  if (slope_KPerM === null) return '';
  const [{ step_m, words }] = stepsOf(system);
  const each_K = slope_KPerM * step_m;
  const size = kelvins(Math.abs(each_K), system, 2);
  if (Number(fixed(Math.abs(each_K), 2)) === 0) return `, and ${words} more or less changes nothing`;
  return `, and ${words} more ${each_K > 0 ? 'costs' : 'gains'} ${size} there`;
}

/** Where to aim so that a cut that misses still lies among the good gaps. */
function aimRemark(
  { cut_m }: GapQuestion,
  { from_m, to_m, below, above }: GoodGaps,
  system: UnitSystem,
): string[] {
  if (cut_m === 0 || (isOpen(below) && isOpen(above))) return [];
  const least_m = isOpen(below) ? from_m : from_m + cut_m;
  const most_m = isOpen(above) ? to_m : to_m - cut_m;
  const off = `A cut may miss by ${gapSize(cut_m, system)}`;
  if (most_m < least_m) return [`${off}, and that is more than the good gaps allow.`];
  const least = boundSize(least_m, 'up', system, !isOpen(below));
  const most = boundSize(most_m, 'down', system, !isOpen(above));
  if (below === 'room') return [`${off}: aim at ${most} at most.`];
  return [`${off}: aim at ${above === 'room' ? `${least} at least` : `${least} to ${most}`}.`];
}

function kneeRemark({ knee }: GapLine, system: UnitSystem): string[] {
  if (knee === null) return [];
  const [before, after] = knee.kind === 'levelsOff' ? ['fast', 'slowly'] : ['slowly', 'fast'];
  return [
    `The curve has its knee at ${gapSize(knee.x, system, 2)}: up to there the film changes ${before}, beyond it ${after}. It is the point farthest from the chord (Satopää et al. 2011); over another range it is another.`,
  ];
}

function changeRemark({ before_m, after_m, from, to, limit }: VerdictChange, system: UnitSystem): string {
  const why = limit === null ? '' : ` (${limitLabels[limit].toLowerCase()})`;
  const at = gapSize((before_m + after_m) / 2, system);
  return `At ${at} the verdict changes from “${verdictWords[from]}” to “${verdictWords[to]}”${why}.`;
}

/** Each reason once. */
function clashRemarks({ points, present, none }: GapLine, system: UnitSystem): string[] {
  const trials = [...points.map(({ trial }) => trial), none, ...(present ? [present] : [])];
  const said = trials.flatMap((trial) =>
    trial.ok || trial.why !== 'clash' ? [] : [wordProblem(trial.problem, system)],
  );
  return [...new Set(said)];
}
