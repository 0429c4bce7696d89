import { readingsOf } from '../../studies/bench/readingsOf.ts';
import type {
  Advised,
  BenchAdviceResult,
  BenchFitQuestion,
  Candidate,
  Refusal,
} from '../../studies/bench/types.ts';
import { quantity } from '../format.ts';
import type { UnitSystem } from '../types.ts';
import { counted, fixed, listed } from '../words.ts';
import { conditionWords, noAnswerWords, placeWords, unknownWords } from './benchWords.ts';

/** Why nothing could be fitted, and what to do about it. */
export function refusalSentence(
  refusal: Refusal,
  question: BenchFitQuestion,
  advice: BenchAdviceResult | null,
  system: UnitSystem,
): string {
  const name = (unknown: keyof typeof unknownWords) => unknownWords[unknown].name;
  const add = addWords(advice, system);
  switch (refusal.why) {
    case 'noUnknowns':
      return 'Choose what may explain the difference: one thing, or up to three.';
    case 'tooManyUnknowns':
      return `Nothing was fitted: a fit takes up to ${refusal.most} things at once. Leave some out.`;
    case 'notInDesign':
      return `Nothing was fitted: without a baffle this design has nothing like ${name(refusal.unknown)}. Choose something else.`;
    case 'tooFewReadings':
      return `Nothing was fitted: ${counted(refusal.used, 'reading')} ${refusal.used === 1 ? 'tells' : 'tell'} anything of the box, and ${counted(refusal.needed, 'unknown')} ${refusal.needed === 1 ? 'needs' : 'need'} at least ${refusal.needed}.${add}`;
    case 'noAnswer':
      return `Nothing was fitted: ${readingWords(question, refusal.reading, system)} has no computed value, for ${noAnswerWords[refusal.noAnswer]}. Correct its conditions, or take it out.`;
    case 'insensitive':
      return `Nothing was fitted: these readings do not tell ${name(refusal.unknown)}, which hardly moves any of them. Leave it out.${add}`;
    case 'notDistinguishable': {
      const [a, b] = refusal.unknowns;
      const with_ =
        refusal.alikeness > 0
          ? 'does the same to these readings as'
          : 'undoes in these readings what is done by';
      return `Nothing was fitted: these readings do not tell ${name(a)} from ${name(b)}. More of one ${with_} more of the other (alikeness ${fixed(refusal.alikeness, 2)}). Fit one of them alone.${add}`;
    }
    case 'atBound':
      return `Nothing was fitted: ${name(refusal.unknown)} ran to ${boundWords(refusal.unknown, refusal.bound, system)}, the end of what can be believed. Something else explains the difference: check watts, room and fan volts of the readings, or choose another unknown.`;
    case 'notConverged':
      return 'Nothing was fitted: the search did not settle. Fit fewer things at once, or check the reading that is farthest off.';
  }
}

function boundWords(unknown: keyof typeof unknownWords, bound: number, system: UnitSystem): string {
  return unknown === 'leak'
    ? quantity(bound, 'length', system, 2)
    : `${fixed(bound, bound < 1 ? 2 : 0)} times the handbook`;
}

function readingWords({ design }: BenchFitQuestion, index: number, system: UnitSystem): string {
  const reading = readingsOf(design)[index];
  return reading ? `${placeWords(reading)} at ${conditionWords(reading, system)}` : `reading ${index + 1}`;
}

/** " Add a reading of the exhaust air, run as designed: …"; empty where nothing is advised. */
function addWords(advice: BenchAdviceResult | null, system: UnitSystem): string {
  const [first] = advice?.advised ?? [];
  const candidate = first && candidateOf(advice, first);
  return candidate ? ` Or add a reading: ${candidateWords(candidate, system)}.` : '';
}

export function candidateOf(
  advice: Pick<BenchAdviceResult, 'candidates'> | null,
  { candidate }: Advised,
): Candidate | undefined {
  return advice?.candidates.find(({ id }) => id === candidate);
}

/** "the exhaust air, run as designed", "film 3, the fan at 8 V". */
export function candidateWords(candidate: Candidate, system: UnitSystem): string {
  const place = placeWords(candidate);
  const isNumbered = candidate.where !== null && candidate.where !== 'inExhaust';
  return `${isNumbered ? place : `the ${place}`}, ${runWords(candidate, system)}`;
}

export function runWords({ run, fan_V }: Pick<Candidate, 'run' | 'fan_V'>, system: UnitSystem): string {
  if (run === 'stopped') return 'the fan stopped';
  return run === 'nominal' ? 'run as designed' : `the fan at ${quantity(fan_V, 'voltage', system, 3)}`;
}

/** "the bond to ±5 %", one for each unknown that is told. */
export function toldWords(leaves: Advised['leaves'], system: UnitSystem): string {
  return listed(
    (Object.keys(leaves) as (keyof typeof unknownWords)[]).flatMap((unknown) => {
      const within = leaves[unknown];
      return within === null || within === undefined
        ? []
        : [`${unknownWords[unknown].name} to ${widthWords(unknown, within, system)}`];
    }),
  );
}

/** "±5 %", "±0.1 mm". */
export function widthWords(unknown: keyof typeof unknownWords, within: number, system: UnitSystem): string {
  return unknown === 'leak'
    ? `±${quantity(within, 'length', system, 2)}`
    : `±${quantity(within, 'ratio', system, 2)}`;
}
