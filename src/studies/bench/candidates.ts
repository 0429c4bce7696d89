import type { SystemInput } from '../../core/system/input.ts';
import { benchModel } from './benchModel.ts';
import { slopesOf } from './slopesOf.ts';
import {
  type AdvisedRun,
  allUnknowns,
  type Candidate,
  type Conditions,
  type Reading,
  type TemperaturePlace,
  type Unknown,
} from './types.ts';
import { believable, coverage, fittedUnknowns, withinOf } from './unknowns.ts';

/** ±1.5 K: thermocouple of type K, class 1, up to 375 °C (IEC 60584-1, from memory). */
const thermocouple_K = 1.5;
/** Common practice, no source: a small manometer, an anemometer over the opening, a handheld sound meter of class 2. */
const manometer_Pa = 1;
const flowShare = 0.05;
const leastFlow_m3PerS = 1e-4;
const soundMeter_dB = 1.5;

type Kind = Candidate['kind'];
type Slopes = readonly (readonly number[] | null)[];

/**
 * Every kind of reading that one way of running the box offers, each at the resistor or sink where it tells most of the unknowns
 * asked for.
 */
export function candidatesOf(
  input: SystemInput,
  run: AdvisedRun,
  conditions: Conditions,
  asked: readonly Unknown[],
): Candidate[] {
  const readings = everyReading(input, conditions);
  const model = benchModel(input, readings);
  const values = model.compute(input);
  const slopes = slopesOf(input, allUnknowns, model.compute);
  const found = readings.flatMap((reading, i) => {
    const computed = values[i]?.value ?? null;
    return computed === null || !isReadable(reading, run, computed)
      ? []
      : [candidateOf(reading, i, run, computed, slopes)];
  });
  const kinds = [...new Set(found.map(({ kind, where }) => where ?? kind))];
  return kinds.flatMap((each) => {
    const alike = found.filter(({ kind, where }) => (where ?? kind) === each);
    return mostTelling(alike, asked) ?? [];
  });
}

/**
 * A draught of centimetres a second carries no vane, presses on no manometer, and a bead hung into it reads the fins that shine
 * on it: with the fans at a stand only metal and sheet are worth a wire. Nor is a pressure or a flow worth one that is hardly
 * more than its instrument’s uncertainty.
 */
function isReadable({ kind, where }: Reading, run: AdvisedRun, computed: number): boolean {
  if (kind === 'pressure' || kind === 'flow')
    return run !== 'stopped' && Math.abs(computed) > 2 * withinFor(kind, computed);
  return run !== 'stopped' || where !== 'inExhaust';
}

/** Change of each unknown as it is fitted, over one standard uncertainty of the instrument. */
export function rowOf({ moves, within }: Candidate, asked: readonly Unknown[]): number[] {
  return asked.map((unknown) => ((moves[unknown] ?? 0) / fittedUnknowns[unknown].little / within) * 2);
}

function mostTelling(alike: readonly Candidate[], asked: readonly Unknown[]): Candidate | null {
  const worth = (candidate: Candidate) => rowOf(candidate, asked).reduce((sum, each) => sum + each * each, 0);
  // A hair more is no more: of equals the first.
  return alike.reduce<Candidate | null>(
    (best, each) => (best === null || worth(each) > worth(best) * (1 + 1e-6) ? each : best),
    null,
  );
}

function candidateOf(
  { kind, where, number, load_W, room_K, fan_V, time_s }: Reading,
  row: number,
  run: AdvisedRun,
  computed: number,
  slopes: Slopes,
): Candidate {
  const within = withinFor(kind as Kind, computed);
  const of = <T>(tell: (unknown: Unknown, slope: number) => T): Record<Unknown, T | null> => {
    const told = allUnknowns.map((unknown, u) => {
      const slope = slopes[u]?.[row];
      return [unknown, slope === undefined ? null : tell(unknown, slope)] as const;
    });
    return Object.fromEntries(told) as Record<Unknown, T | null>;
  };
  return {
    id: [where ?? kind, ...(number > 0 ? [number] : []), run].join(' '),
    run,
    kind: kind as Kind,
    where,
    number,
    load_W,
    room_K,
    fan_V,
    time_s,
    computed,
    within,
    withinFrom: kind === 'temperature' ? 'iec60584' : 'commonPractice',
    moves: of((unknown, slope) => slope * fittedUnknowns[unknown].little),
    alone: of((unknown, slope) => {
      const sigma = within / 2 / Math.max(Math.abs(slope), 1e-300);
      return coverage * sigma < believable ? withinOf(unknown, sigma) : null;
    }),
  };
}

function withinFor(kind: Kind, computed: number): number {
  switch (kind) {
    case 'temperature':
      return thermocouple_K;
    case 'pressure':
      return manometer_Pa;
    case 'flow':
      return Math.max(leastFlow_m3PerS, flowShare * Math.abs(computed));
    case 'sound':
      return soundMeter_dB;
  }
}

/** All that could be read; the value of a reading is not known yet. */
function everyReading({ positions }: SystemInput, conditions: Conditions): Reading[] {
  const made: Reading[] = [];
  const add = (kind: Kind, where: TemperaturePlace | null, number: number) =>
    made.push({ index: made.length, path: '', kind, where, number, value: 0, within: 1, ...conditions });
  for (let n = 1; n <= positions.length + 1; n++) {
    if (n <= positions.length) add('temperature', 'onFilm', n);
    if (n <= positions.length) add('temperature', 'onTerminal', n);
    add('temperature', 'onSink', n);
    add('temperature', 'onSheet', n);
  }
  add('temperature', 'inExhaust', 0);
  add('pressure', null, 0);
  add('flow', null, 0);
  add('sound', null, 0);
  return made;
}
