import type {
  BenchCheckResult,
  CheckedReading,
  ReadingKind,
  TemperaturePlace,
} from '../../studies/bench/types.ts';
import type { UnitSystem } from '../types.ts';
import { capital, counted, listed, percent } from '../words.ts';
import { placeWords, sizeWords } from './benchWords.ts';

export const nothingRead =
  'Nothing has been read yet. Put in what a prototype shows – a sink, a film, the exhaust, the pressure in the plenum – and it is held against what is computed for just that load, room and fan supply.';

/** The whole answer, what counts first: how many agree, and what runs off as a group. */
export function checkSentence(result: BenchCheckResult, system: UnitSystem): string {
  const { readings, answered, agreeing } = result;
  if (readings.length === 0) return nothingRead;
  const left = readings.length - answered;
  const open =
    left === 0
      ? ''
      : ` ${capital(counted(left, 'reading'))} ${left === 1 ? 'has' : 'have'} no computed value beside ${left === 1 ? 'it' : 'them'}.`;
  if (answered === 0) return `No reading can be held against the model.${open}`;
  const more = agreeing.model === 0 ? '' : `, ${agreeing.model} more within instrument and methods together`;
  const off = offWords(readings, system);
  return `${agreeWords(agreeing.instrument, answered)}${more}${off === '' ? '' : `; ${off}`}.${open}`;
}

/** "9 of 12 readings agree within their instruments", "All 12 …", "None of …". */
export function agreeWords(agree: number, of: number): string {
  if (of === 1)
    return agree === 1
      ? 'The one reading agrees within its instrument'
      : 'The one reading does not agree within its instrument';
  if (agree === of) return `All ${of} readings agree within their instruments`;
  if (agree === 0) return `None of ${of} readings agrees within its instrument`;
  return `${agree} of ${of} readings ${agree === 1 ? 'agrees' : 'agree'} within ${agree === 1 ? 'its instrument' : 'their instruments'}`;
}

type Group = TemperaturePlace | Exclude<ReadingKind, 'temperature'>;

interface GroupWords {
  readonly many: string;
  readonly one: (reading: CheckedReading) => string;
  readonly more: string;
  readonly less: string;
  /** In percent of the computed value, or in the unit of the reading. */
  readonly relative?: boolean;
}

const ownName = (reading: CheckedReading) => placeWords(reading);
const warmer = { one: ownName, more: 'warmer', less: 'cooler' };

const groupWords: Readonly<Record<Group, GroupWords>> = {
  onFilm: { many: 'the films run', ...warmer },
  onTerminal: { many: 'the terminals run', ...warmer },
  onSink: { many: 'the sinks run', ...warmer },
  onSheet: { many: 'the sheet runs', ...warmer },
  inExhaust: { many: 'the exhaust air is', ...warmer, one: () => 'the exhaust air' },
  pressure: {
    many: 'the plenum pressure is',
    one: () => 'the plenum pressure',
    more: 'higher',
    less: 'lower',
    relative: true,
  },
  flow: { many: 'the flow is', one: () => 'the flow', more: 'more', less: 'less', relative: true },
  voltage: {
    many: 'the volts at the fan are',
    one: () => 'what reaches the fan',
    more: 'more',
    less: 'less',
  },
  sound: { many: 'the sound is', one: () => 'the sound', more: 'louder', less: 'quieter' },
};

/** As many groups as a sentence bears. */
const mostGroups = 2;
/** So many of a group on one side make it one-sided. */
const oneSided = 0.75;

/** Groups that run to one side by more than their instruments allow, the farthest first. */
function offWords(readings: readonly CheckedReading[], system: UnitSystem): string {
  const groups = new Map<Group, CheckedReading[]>();
  for (const reading of readings) {
    if (reading.times === null) continue;
    const group = reading.kind === 'temperature' ? (reading.where ?? 'inExhaust') : reading.kind;
    groups.set(group, [...(groups.get(group) ?? []), reading]);
  }
  const off = [...groups].flatMap(([group, found]) => {
    const times = mean(found.map((reading) => reading.times ?? 0));
    const share = found.filter((reading) => (reading.times ?? 0) * times > 0).length / found.length;
    return Math.abs(times) > 1 && share >= oneSided ? [{ group, found, times }] : [];
  });
  off.sort((a, b) => Math.abs(b.times) - Math.abs(a.times));
  return listed(off.slice(0, mostGroups).map(({ group, found }) => groupPhrase(group, found, system)));
}

function groupPhrase(group: Group, found: readonly CheckedReading[], system: UnitSystem): string {
  const words = groupWords[group];
  const [first] = found as [CheckedReading];
  const change = mean(found.map(({ deviation }) => deviation ?? 0));
  const base = mean(found.map(({ computed }) => computed ?? 0));
  const size =
    words.relative && base !== 0 ? percent(Math.abs(change / base)) : sizeWords(first.kind, change, system);
  const isNumbered = found.length === 1 && first.kind === 'temperature' && first.where !== 'inExhaust';
  const subject = isNumbered ? `${words.one(first)} runs` : words.many;
  return `${subject} ${size} ${change > 0 ? words.more : words.less} than computed`;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(values.length, 1);
}
