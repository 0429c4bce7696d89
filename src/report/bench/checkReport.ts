import type { BenchCourse } from '../../studies/bench/course.ts';
import type {
  Agreement,
  BenchCheckResult,
  BenchQuestion,
  CheckedReading,
  ChiSquare,
  NoAnswer,
} from '../../studies/bench/types.ts';
import { type Cell, table } from '../makeTable.ts';
import type { StudyReport } from '../studyReport.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { capital, counted, fixed, listed } from '../words.ts';
import {
  chanceWords,
  conditionWords,
  noAnswerWords,
  partWords,
  placeWords,
  readingName,
  saidDifference,
  saidReading,
  saidTimesWithin,
  saidWithin,
} from './benchWords.ts';
import { checkSentence } from './checkSentence.ts';
import { fittedSentence } from './fittedWords.ts';
import { type ResidualChart, residualChart, residualTable } from './residualChart.ts';
import { type WarmUp, warmUpOf } from './warmUpChart.ts';

export const agreementWords: Readonly<Record<Agreement, string>> = {
  instrument: 'agrees',
  model: 'agrees within the methods',
  disagrees: 'disagrees',
};

/** How a row is marked beside its words. */
export type CheckState = Agreement | 'noAnswer';

/** Does the bench agree: all that screen, sheet and terminal say about readings beside computed values. */
export interface CheckReport extends StudyReport {
  /** What an earlier fit has put into the design; empty where there was none. */
  readonly fitted: string;
  readonly check: TextTable;
  /** One for every row of `check`. */
  readonly rows: readonly { readonly key: string; readonly state: CheckState }[];
  readonly residuals: ResidualChart | null;
  readonly warmUp: WarmUp | null;
}

/** @param course the warm-up that was read, where there is one and it is there already */
export function checkReport(
  { design }: BenchQuestion,
  result: BenchCheckResult,
  system: UnitSystem,
  course: BenchCourse | null = null,
): CheckReport {
  const residuals = residualChart(
    result.readings.flatMap((reading) =>
      reading.times === null
        ? []
        : [{ key: reading.path, label: readingName(reading), before: reading.times, after: null }],
    ),
  );
  const warmUp = warmUpOf(course, result.readings, system);
  const check = checkTable(result.readings, system);
  return {
    sentence: checkSentence(result, system),
    remarks: remarksOf(result),
    fitted: design.fitted.readings > 0 ? fittedSentence(design, system) : '',
    check,
    rows: result.readings.map(({ path, agreement }) => ({ key: path, state: agreement ?? 'noAnswer' })),
    residuals,
    warmUp,
    tables: [
      ...(result.readings.length > 0 ? [check] : []),
      ...(residuals ? [residualTable(residuals)] : []),
      ...(warmUp ? [warmUp.table] : []),
    ],
  };
}

/** For terminal and paper, where nothing else says what an earlier fit has put into the design. */
export function withFit(report: CheckReport): CheckReport {
  return report.fitted === '' ? report : { ...report, remarks: [report.fitted, ...report.remarks] };
}

function checkTable(readings: readonly CheckedReading[], system: UnitSystem): TextTable {
  return table(
    'benchCheck',
    'Readings beside computed values',
    ['Where', 'State', '>Measured', '>Computed', '>Off', '>Within', '>Off over within', 'Conditions'],
    readings.map((reading): Cell[] => [
      capital(placeWords(reading)),
      stateWords(reading),
      saidReading(reading.kind, reading.value, system),
      saidReading(reading.kind, reading.computed, system),
      saidDifference(reading.kind, reading.deviation, system),
      saidWithin(reading.kind, reading.within, system),
      saidTimesWithin(reading.times),
      conditionWords(reading, system),
    ]),
  );
}

function stateWords({ agreement, why }: CheckedReading): string {
  if (agreement !== null) return agreementWords[agreement];
  return `no answer: ${why === null ? 'nothing is computed there' : noAnswerWords[why]}`;
}

function remarksOf(result: BenchCheckResult): string[] {
  const { readings, answered, chiSquare } = result;
  if (readings.length === 0) return [];
  return [
    ...chiSquareRemark(chiSquare),
    ...(answered > 0 ? [withinRemark(readings)] : []),
    ...unansweredRemarks(readings),
    ...(readings.some(({ kind }) => kind === 'voltage')
      ? [
          'Volts at the fan tell of leads and plugs: computed is what was set. They are left out of the sum above.',
        ]
      : []),
    ...(readings.some(({ time_s }) => time_s !== null)
      ? [
          'Readings of the warm-up count from the moment at which load and fan were switched on together, everything as warm as the room before.',
        ]
      : []),
    'Every reading is held against the box at its own watts, room and fan supply, the watts shared out as in the design.',
  ];
}

/** How far all of them together are off. */
export function chiSquareRemark({ value, degrees, chance }: ChiSquare): string[] {
  if (degrees === 0 || chance === null) return [];
  const sum = `The squares of all deviations over the instruments’ standard uncertainties (χ²) add up to ${fixed(value, 1)}, where instruments alone would make about ${degrees}`;
  if (chance > 0.05) return [`${sum}: the scatter is that of the instruments.`];
  return [
    `${sum}; chance brings as much in ${chanceWords(chance)}. Something beyond the instruments is at work.`,
  ];
}

function withinRemark(readings: readonly CheckedReading[]): string {
  const factors = [
    ...new Set(
      readings.flatMap(({ agreement, foremost }) =>
        agreement !== null && agreement !== 'instrument' && foremost ? [partWords(foremost.part)] : [],
      ),
    ),
  ].slice(0, 3);
  const most = factors.length === 0 ? '' : ` Of these, most comes from ${listed(factors)}.`;
  return `“Agrees” is within the instrument, at 95 %; “agrees within the methods” beyond it, yet within instrument and the scatter of the methods together.${most}`;
}

function unansweredRemarks(readings: readonly CheckedReading[]): string[] {
  const reasons = new Map<NoAnswer, string[]>();
  for (const reading of readings) {
    if (reading.why === null) continue;
    reasons.set(reading.why, [...(reasons.get(reading.why) ?? []), placeWords(reading)]);
  }
  return [...reasons].map(([why, places]) => {
    const names = [...new Set(places)];
    const who = names.length <= 4 ? listed(names) : counted(places.length, 'reading');
    return `No computed value for ${who}: ${noAnswerWords[why]}.`;
  });
}
