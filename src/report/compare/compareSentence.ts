import type { Compared } from '../../studies/compare/compare.ts';
import type { UnitSystem } from '../types.ts';
import { verdictWords } from '../wording.ts';
import { kelvins, listed } from '../words.ts';
import type { InputRow } from './inputRows.ts';
import { filmOf_K, type ResultRow } from './resultRows.ts';

/** Which holds, which is coolest and by how much, which is quietest. @param letters of the designs, the bench's first */
export function compareSentence(
  letters: readonly string[],
  compared: readonly Compared[],
  inputs: readonly InputRow[],
  results: readonly ResultRow[],
  system: UnitSystem,
): string {
  if (letters.length < 2) return 'There is nothing to compare it with yet.';
  if (inputs.length === 0) return 'No input differs between them, so neither does anything that follows.';
  const cold = coolest(letters, compared, results, system);
  const quiet = bestOf(letters, results, 'sound');
  const strong = bestOf(letters, results, 'running');
  const said = [
    cold,
    quiet.length === 0 ? '' : `${whoIs(quiet, bestOf(letters, results, 'film'))} quietest`,
    strong.length === 0 ? '' : `${listed(strong)} may carry most`,
  ].filter((part) => part !== '');
  const first = said.length === 0 ? 'None is cooler, quieter or stronger than another' : said.join('; ');
  return `${first}. ${verdicts(letters, compared)}`;
}

/** "it is, too," where the same one was just named. */
function whoIs(names: readonly string[], before: readonly string[]): string {
  if (names.join() === before.join()) return names.length === 1 ? 'it is also' : 'they are also';
  return `${listed(names)} ${names.length === 1 ? 'is' : 'are'}`;
}

/** Against the design on the bench, or, where that is the coolest, against the next. */
function coolest(
  letters: readonly string[],
  compared: readonly Compared[],
  results: readonly ResultRow[],
  system: UnitSystem,
): string {
  const names = bestOf(letters, results, 'film');
  if (names.length === 0) return '';
  const films = compared.map(({ outcome }) => (outcome.ok ? filmOf_K(outcome) : Number.POSITIVE_INFINITY));
  const best = Math.min(...films);
  const others = films.flatMap((film_K, i) =>
    !names.includes(letters[i] ?? '') && Number.isFinite(film_K) ? [i] : [],
  );
  const next = others.reduce((a, b) => ((films[b] ?? 0) < (films[a] ?? 0) ? b : a), others[0] ?? 0);
  const other = others.includes(0) ? 0 : next;
  const gap_K = (films[other] ?? 0) - best;
  const are = `${listed(names)} ${names.length === 1 ? 'is' : 'are'} coolest`;
  return `${are}: ${kelvins(gap_K, system, gap_K < 9.95 ? 1 : 0)} below ${letters[other]}`;
}

/** Letters of those that are best at something; none where all are alike. */
function bestOf(letters: readonly string[], results: readonly ResultRow[], key: string): string[] {
  const cells = results.find((row) => row.key === key)?.cells ?? [];
  return cells.flatMap((cell, i) => (cell.standing === 'best' ? [letters[i] ?? ''] : []));
}

const states = ['holds', 'little', 'fails', 'noAnswer'] as const;
const plural: Readonly<Record<(typeof states)[number], string>> = {
  holds: 'hold',
  little: 'hold with little to spare',
  fails: 'do not hold',
  noAnswer: 'have no answer',
};

function verdicts(letters: readonly string[], compared: readonly Compared[]): string {
  const groups = states.flatMap((state) => {
    const names = compared.flatMap(({ outcome }, i) =>
      (outcome.ok ? outcome.verdict.state : 'noAnswer') === state ? [letters[i] ?? ''] : [],
    );
    if (names.length === 0) return [];
    const one = state === 'noAnswer' ? 'has no answer' : verdictWords[state];
    if (names.length === letters.length) return [`${names.length === 2 ? 'Both' : 'All'} ${plural[state]}`];
    return [`${listed(names)} ${names.length === 1 ? one : plural[state]}`];
  });
  return `${groups.join('; ')}.`;
}
