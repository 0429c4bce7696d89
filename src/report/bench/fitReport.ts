import { readingsOf } from '../../studies/bench/readingsOf.ts';
import type {
  BenchAdviceResult,
  BenchFitQuestion,
  BenchFitResult,
  FittedReading,
  FittedValue,
  Unknown,
} from '../../studies/bench/types.ts';
import type { Said } from '../amount.ts';
import { quantity } from '../format.ts';
import { table } from '../makeTable.ts';
import { saidPercent, saidQuantity } from '../said.ts';
import type { StudyReport } from '../studyReport.ts';
import type { TextTable, UnitSystem } from '../types.ts';
import { capital, counted, fixed, listed } from '../words.ts';
import {
  conditionWords,
  placeWords,
  readingName,
  saidReading,
  saidTimesWithin,
  unknownWords,
} from './benchWords.ts';
import { chiSquareRemark } from './checkReport.ts';
import { lengthWithUncertainty, withUncertainty } from './fittedWords.ts';
import { refusalSentence } from './refusalWords.ts';
import { type ResidualChart, residualChart, residualTable } from './residualChart.ts';

const thin = '\u202f';

/** What explains the difference: all that screen, sheet and terminal say about a fit. */
export interface FitReport extends StudyReport {
  /** There are no values; the sentence says why and what to do about it. */
  readonly isRefused: boolean;
  readonly residuals: ResidualChart | null;
  /** Each beside its picture; `tables` has them in the order of reading. */
  readonly twins: {
    readonly values: TextTable | null;
    readonly correlation: TextTable | null;
    readonly readings: TextTable | null;
    readonly residuals: TextTable | null;
  };
}

/** @param advice for the same unknowns: what to add where readings do not tell; `null` while it is not there */
export function fitReport(
  question: BenchFitQuestion,
  result: BenchFitResult,
  system: UnitSystem,
  advice: BenchAdviceResult | null = null,
): FitReport {
  if (result.refused) {
    return {
      sentence: refusalSentence(result.refused, question, advice, system),
      remarks: [],
      isRefused: true,
      residuals: null,
      twins: { values: null, correlation: null, readings: null, residuals: null },
      tables: [],
    };
  }
  const residuals = residualChart(
    result.readings.map((reading) => ({
      key: reading.path,
      label: readingName(reading),
      before: reading.timesBefore,
      after: reading.timesAfter,
    })),
  );
  const twins = {
    values: valuesTable(result.values, system),
    correlation: result.values.length > 1 ? correlationTable(result) : null,
    readings: readingsTable(result.readings, system),
    residuals: residuals && residualTable(residuals),
  };
  return {
    sentence: fitSentence(result, system),
    remarks: remarksOf(question, result),
    isRefused: false,
    residuals,
    twins,
    tables: Object.values(twins).flatMap((each) => each ?? []),
  };
}

/** "bond 0.83 ± 0.05", "leak 0.42 mm ± 0.1 mm", "no leak, at most 0.1 mm". */
function valueWords({ unknown, value, within, high, atZero }: FittedValue, system: UnitSystem): string {
  const { name } = unknownWords[unknown];
  if (unknown !== 'leak') return `${name} ${withUncertainty(value, within * value)}`;
  if (atZero) return `no leak, at most ${quantity(high, 'length', system, 2)}`;
  return `${name} ${lengthWithUncertainty(value, within, system)}`;
}

function fitSentence({ values, readings }: BenchFitResult, system: UnitSystem): string {
  const inside = (times: (reading: FittedReading) => number) =>
    readings.filter((reading) => Math.abs(times(reading)) <= 1).length;
  const after = inside(({ timesAfter }) => timesAfter);
  const before = inside(({ timesBefore }) => timesBefore);
  const what = listed(values.map((value) => valueWords(value, system)));
  const of = counted(readings.length, 'reading');
  const does = values.length === 1 ? 'explains' : 'explain';
  const than =
    after > before
      ? `then ${after} of ${readings.length} lie inside the band of their instruments, ${before} before`
      : `yet no more of them lie inside the band of their instruments than before: ${after} of ${readings.length}`;
  return `${capital(what)} ${does} the ${of} best, at 95${thin}%; ${than}.`;
}

/** Beyond this two values hang together so much that it has to be said. */
const muchAlike = 0.7;
/** A reading that says so much of all there is to say is checked by no other. */
const alone = 0.9;

function remarksOf(question: BenchFitQuestion, result: BenchFitResult): string[] {
  const { values, readings, birge, after, leftOut, coverage } = result;
  return [
    `Factors are on what the methods give as published, 1 as published; what is not fitted stands as it is. Least squares, each reading by its instrument; ± is ${fixed(coverage, 2)} standard uncertainties, 95${thin}%.`,
    ...pairs(result).map(([a, b, correlation]) => pairRemark(a, b, correlation)),
    ...(birge > 1
      ? [
          `The readings scatter more than their instruments allow: every ± is taken ${fixed(birge, 1)} times as wide for it (Birge’s ratio).`,
        ]
      : []),
    ...chiSquareRemark(after),
    ...(values.some(({ atZero }) => atZero)
      ? ['The leak ended at nothing: what is told of it is the most that it may be.']
      : []),
    ...readings
      .filter(({ leverage }) => leverage > alone && readings.length > values.length)
      .slice(0, 3)
      .map(
        (reading) =>
          `${capital(placeWords(reading))} decides almost by itself, and no other reading checks it: read it again, or add one like it.`,
      ),
    ...(readings.length === values.length
      ? [
          'There are as many values as readings, so that the fit meets every one of them and nothing checks it: add readings.',
        ]
      : []),
    ...leftOutRemark(question, leftOut),
  ];
}

function pairs({ values, correlation }: BenchFitResult): [Unknown, Unknown, number][] {
  return values.flatMap((a, i) =>
    values
      .slice(i + 1)
      .map((b, j): [Unknown, Unknown, number] => [a.unknown, b.unknown, correlation[i]?.[i + 1 + j] ?? 0]),
  );
}

function pairRemark(a: Unknown, b: Unknown, correlation: number): string {
  const both = `${capital(unknownWords[a].name)} and ${unknownWords[b].name}`;
  const number = `(correlation ${fixed(correlation, 2)})`;
  if (Math.abs(correlation) < muchAlike) return `${both} are told apart well ${number}.`;
  return correlation > 0
    ? `${both} hang together ${number}: more of one with more of the other fits nearly as well.`
    : `${both} hang together ${number}: more of one with less of the other fits nearly as well.`;
}

function leftOutRemark({ design }: BenchFitQuestion, leftOut: readonly number[]): string[] {
  if (leftOut.length === 0) return [];
  const readings = readingsOf(design);
  const names = new Set(
    leftOut.flatMap((index) => {
      const reading = readings[index];
      return reading ? [placeWords(reading)] : [];
    }),
  );
  return [`Left out, for no unknown moves them: ${listed([...names])}.`];
}

function valuesTable(values: readonly FittedValue[], system: UnitSystem): TextTable {
  return table(
    'benchFit',
    'What was fitted',
    ['What', '>Before', '>Fitted', '>From', '>To', '>±, 95 %'],
    values.map((value) => {
      const say = (each: number): Said =>
        value.unknown === 'leak'
          ? saidQuantity(each, 'length', system, 3)
          : { text: fixed(each, 3), value: each, unit: '' };
      const within =
        value.unknown === 'leak'
          ? saidQuantity(value.within, 'length', system, 2)
          : saidPercent(value.within);
      return [
        unknownWords[value.unknown].label,
        say(value.start),
        say(value.value),
        say(value.low),
        say(value.high),
        within,
      ];
    }),
  );
}

function correlationTable({ values, correlation }: BenchFitResult): TextTable {
  return table(
    'benchCorrelation',
    'How the fitted values hang together: correlation',
    ['What', ...values.map(({ unknown }) => `>${unknownWords[unknown].label}`)],
    values.map(({ unknown }, i) => [
      unknownWords[unknown].label,
      ...values.map((_, j): Said => {
        const value = correlation[i]?.[j] ?? 0;
        return { text: fixed(value, 2), value, unit: '' };
      }),
    ]),
  );
}

function readingsTable(readings: readonly FittedReading[], system: UnitSystem): TextTable {
  return table(
    'benchFitReadings',
    'Readings before the fit and after it',
    ['Where', 'Conditions', '>Measured', '>Before', '>After', '>Off before', '>Off after', '>Its say'],
    readings.map((reading) => [
      capital(placeWords(reading)),
      conditionWords(reading, system),
      saidReading(reading.kind, reading.value, system),
      saidReading(reading.kind, reading.computedBefore, system),
      saidReading(reading.kind, reading.computedAfter, system),
      saidTimesWithin(reading.timesBefore),
      saidTimesWithin(reading.timesAfter),
      saidPercent(reading.leverage),
    ]),
  );
}
