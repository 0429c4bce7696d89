import type { Design } from '../../model/design.ts';
import type { ChangesResult } from '../../studies/changes/changes.ts';
import { bestApart, helps, isLast, type Tried } from '../../studies/changes/tried.ts';
import { limitPlaces } from '../limitPlaces.ts';
import type { StudyReport } from '../studyReport.ts';
import type { UnitSystem } from '../types.ts';
import { kelvins, small } from '../words.ts';
import { type ChangeRow, changeRow } from './changeRow.ts';
import { changesSentence } from './changesSentence.ts';
import { changesTable, leftOutTable } from './changesTables.ts';
import { changeWords } from './changeWords.ts';
import { type LeftOutRow, leftOutRow } from './leftOutRows.ts';
import { type TogetherRow, togetherRow } from './togetherRow.ts';

export interface ChangesReport extends StudyReport {
  /** What stands over the gains: "Gain at the derating line". */
  readonly head: string;
  /** Whether that is another place than the hottest film. */
  readonly hasOtherFilm: boolean;
  /** Changes that help, the best first; less load comes last. */
  readonly rows: readonly ChangeRow[];
  /** The three best that do not touch the same inputs, for a short list. */
  readonly best: readonly ChangeRow[];
  /** The first of them in a line: "First, take the thinnest spacer filament: 6.5 K." */
  readonly first: string;
  readonly together: readonly TogetherRow[];
  readonly leftOut: readonly LeftOutRow[];
}

/** As many as a short list holds. */
const shortList = 3;

/** What to change first, ranked by the kelvin gained at the limit that gives first. */
export function changesReport(design: Design, result: ChangesResult, system: UnitSystem): ChangesReport {
  const { limit, tried } = result;
  const at = limit === null ? 'the hottest film' : limitPlaces[limit];
  const hasOtherFilm = limit !== null && limit !== 'film';
  const head = result.before.ok ? `Gain at ${at}` : 'Hottest film with it';
  // Where there is no answer to begin with, most changes bring none: that is no news of theirs.
  const refused = tried.filter(
    ({ after, fault }) => result.before.ok || fault || (!after.ok && after.why === 'clash'),
  );
  const leftOut = refused.flatMap((each) => leftOutRow(design, each, system) ?? []);
  const possible = tried.filter(({ after, fault }) => after.ok && fault === undefined);
  const rows = possible.filter(helps).map((each) => changeRow(design, each, system));
  const best = bestApart(tried, shortList);
  const last = possible.find((each) => isLast(each) && helps(each));
  const shown = best.length > 0 || last === undefined ? best : [last];
  const together = result.together.map((each) => togetherRow(each, system));
  const all = possible.map((each) => changeRow(design, each, system));
  return {
    head,
    hasOtherFilm,
    sentence: changesSentence(result, best, last ?? null, at, system),
    remarks: remarks(result, at),
    rows,
    best: shown.map((each) => changeRow(design, each, system)),
    first: firstOf(shown[0] ?? null, system),
    together,
    leftOut,
    tables: [changesTable(all, together, head, hasOtherFilm), leftOutTable(leftOut)],
  };
}

function firstOf(best: Tried | null, system: UnitSystem): string {
  if (best === null) return 'Nothing tried here gains anything.';
  const gain = best.gain === null ? '' : `: ${kelvins(best.gain.limit_K, system, 1)}`;
  return `First, ${small(changeWords[best.key].does)}${gain}.`;
}

function remarks({ before }: ChangesResult, at: string): string[] {
  const counted = !before.ok
    ? 'The design has no answer as it is: what brings one is ranked by its hottest film.'
    : before.margins_K[before.limit] === undefined
      ? `Kelvin are counted at ${at}: what gives first, ${limitPlaces[before.limit]}, is no temperature.`
      : `Kelvin are counted at ${at}, which gives first.`;
  return [
    `${counted} Each change is tried by itself on the design as it is, everything else kept.`,
    'The steps are those of a small workshop: common practice, no source.',
  ];
}
