import type {
  BenchAdviceQuestion,
  BenchAdviceResult,
  Candidate,
  Course,
  Unknown,
} from '../../studies/bench/types.ts';
import type { Said } from '../amount.ts';
import { duration, saidDuration } from '../durations.ts';
import { type Cell, table } from '../makeTable.ts';
import { amountOf, saidAs, saidPercent, saidTemperature } from '../said.ts';
import type { StudyReport } from '../studyReport.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { capital, kelvins, listed } from '../words.ts';
import { benchPractice, type Practice } from './benchPractice.ts';
import { noAnswerWords, placeWords, saidMove, saidReading, saidWithin, unknownWords } from './benchWords.ts';
import { candidateOf, candidateWords, runWords, toldWords, widthWords } from './refusalWords.ts';

/** What to read next, how long to wait and how to go about it. */
export interface AdviceReport extends StudyReport {
  /** Common practice, no source. */
  readonly practice: readonly Practice[];
}

export function adviceReport(
  _question: BenchAdviceQuestion,
  result: BenchAdviceResult,
  system: UnitSystem,
): AdviceReport {
  const tables = [
    advisedTable(result, system),
    tellsTable(result, system),
    movesTable(result, system),
    waitsTable(result.courses, result, system),
    practiceTable(),
  ];
  return {
    sentence: sentenceOf(result, system),
    remarks: remarksOf(result, system),
    practice: benchPractice,
    tables: tables.filter(({ rows }) => rows.length > 0),
  };
}

function sentenceOf(result: BenchAdviceResult, system: UnitSystem): string {
  const [first] = result.advised;
  const candidate = first && candidateOf(result, first);
  const wait = waitWords(result);
  if (first === undefined || candidate === undefined) {
    return result.candidates.length === 0
      ? 'No reading of this box can be foretold: there is nothing to advise.'
      : `No further reading would tell much more than those that are there.${wait}`;
  }
  const told = toldWords(first.leaves, system);
  const tells = told === '' ? 'it narrows down what is open' : `with it the readings tell ${told}`;
  return `Read next: ${candidateWords(candidate, system)}; ${tells}.${wait}`;
}

/** The longest wait of the ordinary run. */
function waitWords({ courses }: BenchAdviceResult): string {
  const waits = courses.find(({ run }) => run === 'nominal')?.waits ?? [];
  const longest = waits.reduce((most, { time_s }) => Math.max(most, time_s), 0);
  return longest > 0 ? ` From cold, wait ${duration(longest)} before anything counts as settled.` : '';
}

function remarksOf({ now, unknowns, courses, cannot, candidates }: BenchAdviceResult, system: UnitSystem) {
  const known = toldWords(now, system);
  const open = unknowns
    .filter((unknown) => (now[unknown] ?? null) === null)
    .map((each) => unknownWords[each].name);
  return [
    ...(known === '' ? [] : [`The readings that are there tell ${known}.`]),
    ...(open.length === 0 ? [] : [`Not told yet, or not apart from one another: ${listed(open)}.`]),
    ...courses.flatMap(({ run, slowest_s }) =>
      slowest_s === null
        ? []
        : [
            `Slowest time constant, ${run === 'stopped' ? 'the fan stopped' : run === 'nominal' ? 'run as designed' : 'with less at the fan'}: ${duration(slowest_s)}; five of them leave less than a hundredth of the rise.`,
          ],
    ),
    ...cannot.map(
      ({ run, why }) =>
        `${run === 'stopped' ? 'With the fan stopped' : run === 'nominal' ? 'As designed' : 'With less at the fan'} nothing can be read: ${noAnswerWords[why]}.`,
    ),
    ...(candidates.length > 0
      ? [
          'Instruments: a thermocouple of class 1 (IEC 60584-1), ±1.5\u202fK; the others as is common practice, no source.',
        ]
      : []),
    ...(candidates.some(({ run }) => run === 'stopped')
      ? [
          'A run with the fan stopped is made with so few watts that nothing comes near its limit. Stay beside it.',
        ]
      : []),
  ];
}

function saidWidth(unknown: Unknown, within: number | null | undefined, system: UnitSystem): Said {
  const isLeak = unknown === 'leak';
  if (within === null || within === undefined)
    return { text: 'nothing', ...(isLeak ? amountOf(null, 'length', system) : { value: null, unit: '%' }) };
  const text = widthWords(unknown, within, system);
  return isLeak ? saidAs(text, within, 'length', system) : { ...saidPercent(within), text };
}

function advisedTable(result: BenchAdviceResult, system: UnitSystem): TextTable {
  const { advised, unknowns } = result;
  return table(
    'benchAdvised',
    'Readings worth adding, in this order: what all of them together then tell',
    ['Read', 'How', '>Computed', '>Instrument', ...unknowns.map((each) => `>${unknownWords[each].label}`)],
    advised.flatMap((each): Cell[][] => {
      const candidate = candidateOf(result, each);
      if (candidate === undefined) return [];
      return [
        [
          ...candidateCells(candidate, system),
          ...unknowns.map((unknown) => {
            const width = saidWidth(unknown, each.leaves[unknown], system);
            return width.value === null ? { ...width, text: 'open' } : width;
          }),
        ],
      ];
    }),
  );
}

function candidateCells(candidate: Candidate, system: UnitSystem): Cell[] {
  return [
    capital(placeWords(candidate)),
    capital(runWords(candidate, system)),
    saidReading(candidate.kind, candidate.computed, system),
    saidWithin(candidate.kind, candidate.within, system),
  ];
}

/** Unknowns that the design has. */
function tellable({ candidates }: BenchAdviceResult): Unknown[] {
  const [first] = candidates;
  return first
    ? (Object.keys(first.moves) as Unknown[]).filter((unknown) =>
        candidates.some(({ moves }) => moves[unknown] !== null),
      )
    : [];
}

/** Readings that tell anything of anything; a sound tells nothing of the box. */
function telling({ candidates }: BenchAdviceResult): Candidate[] {
  return candidates.filter(({ alone }) => Object.values(alone).some((within) => within !== null));
}

/** Below this share of its instrument a move cannot be seen. */
const unseen = 1e-3;

function movedCell({ kind, moves, within }: Candidate, unknown: Unknown, system: UnitSystem): Said {
  const move = moves[unknown];
  const said = saidMove(kind, move, system);
  return move !== null && Math.abs(move) < unseen * within ? { ...said, text: 'hardly' } : said;
}

function tellsTable(result: BenchAdviceResult, system: UnitSystem): TextTable {
  const unknowns = tellable(result);
  return table(
    'benchTells',
    'What each reading by itself would tell, all else known, at 95 %',
    ['Read', 'How', '>Computed', '>Instrument', ...unknowns.map((each) => `>${unknownWords[each].label}`)],
    telling(result).map((candidate) => [
      ...candidateCells(candidate, system),
      ...unknowns.map((unknown) => saidWidth(unknown, candidate.alone[unknown], system)),
    ]),
  );
}

function movesTable(result: BenchAdviceResult, system: UnitSystem): TextTable {
  const unknowns = tellable(result);
  const little = (unknown: Unknown) => (unknown === 'leak' ? '0.1 mm' : '1 %');
  return table(
    'benchMoves',
    'How each reading moves with a little more of one thing',
    ['Read', 'How', ...unknowns.map((each) => `>${unknownWords[each].label}, ${little(each)} more`)],
    telling(result).map((candidate) => [
      capital(placeWords(candidate)),
      capital(runWords(candidate, system)),
      ...unknowns.map((unknown) => movedCell(candidate, unknown, system)),
    ]),
  );
}

function waitsTable(courses: readonly Course[], result: BenchAdviceResult, system: UnitSystem): TextTable {
  return table(
    'benchWaits',
    'How long to wait from cold until a place stands still',
    ['Where', 'How', '>Wait', '>Ends at', '>Then left'],
    courses.flatMap(({ run, waits }) => {
      const fan_V = result.candidates.find((candidate) => candidate.run === run)?.fan_V ?? 0;
      return waits.map((wait) => [
        capital(placeWords({ kind: 'temperature', ...wait })),
        capital(runWords({ run, fan_V }, system)),
        saidDuration(wait.time_s),
        saidTemperature(wait.end_K, system, 1),
        saidAs(kelvins(wait.left_K, system, 1), wait.left_K, 'temperatureDifference', system),
      ]);
    }),
  );
}

/** How to measure, for terminal and paper. */
function practiceTable(): TextTable {
  return table(
    'benchPractice',
    'How to go about it: common practice, no source',
    ['What', 'How'],
    benchPractice.flatMap(({ title, lines }) => lines.map((line) => [title, line])),
  );
}
