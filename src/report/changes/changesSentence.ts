import type { ChangesResult } from '../../studies/changes/changes.ts';
import { leastGain_K, type Tried } from '../../studies/changes/tried.ts';
import type { UnitSystem } from '../types.ts';
import { verdictWords } from '../wording.ts';
import { kelvins, listed, small, temperature } from '../words.ts';
import { changeWords, costWords } from './changeWords.ts';

/** What to do first, what it gains and what it asks; then what comes next. */
export function changesSentence(
  result: ChangesResult,
  best: readonly Tried[],
  last: Tried | null,
  at: string,
  system: UnitSystem,
): string {
  const [first, ...others] = best;
  if (!result.before.ok) return withoutAnswer(first, system);
  if (first === undefined) return nothingHelps(last, at, system);
  const next = others.map((each) => `${small(changeWords[each.key].does)}: ${gained(each, system)}`);
  const then = next.length > 0 ? ` Next, ${next.join('; ')}.` : '';
  return `First, ${small(changeWords[first.key].does)}: ${gained(first, system)} at ${at}, for ${costsOf(first)}.${then}${endsAs(result, first)}`;
}

function withoutAnswer(first: Tried | undefined, system: UnitSystem): string {
  if (first === undefined || !first.after.ok)
    return 'There is no answer as it is, and none of the changes tried brings one by itself.';
  const { film_K } = first.after.outputs;
  return `There is no answer as it is. First, ${small(changeWords[first.key].does)}: then there is one, with the hottest film at ${temperature(film_K, system)}, for ${costsOf(first)}.`;
}

function nothingHelps(last: Tried | null, at: string, system: UnitSystem): string {
  const none = `Nothing tried here gains as much as ${kelvins(2 * leastGain_K, system, 1)} at ${at}`;
  return last === null ? `${none}.` : `${none}, but a tenth less load: ${gained(last, system)}.`;
}

function gained({ gain }: Tried, system: UnitSystem): string {
  return kelvins(gain?.limit_K ?? 0, system, 1);
}

function costsOf({ costs }: Tried): string {
  return listed(costs.map((cost) => costWords[cost].phrase));
}

const counts = ['', 'one', 'two', 'three'];

/** Where the verdict stands after the first, or after the best at once. */
function endsAs({ before, together }: ChangesResult, first: Tried): string {
  if (!before.ok) return '';
  if (first.after.ok && first.after.state !== before.state)
    return ` With the first the box ${verdictWords[first.after.state]}.`;
  const all = together.at(-1);
  if (all === undefined || !all.after.ok) return '';
  const still = all.after.state === before.state ? 'still ' : '';
  return ` With the best ${counts[all.changes.length]} at once the box ${still}${verdictWords[all.after.state]}.`;
}
