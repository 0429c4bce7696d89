import { loadOf_W, type Sizer, sizersOf } from '../../studies/sizing/sizers.ts';
import type { Sized, SizingQuestion, SizingResult } from '../../studies/sizing/sizing.ts';
import type { Standing } from '../../studies/sizing/standing.ts';
import type { Values } from '../../studies/vary.ts';
import type { Amounts, Said } from '../amount.ts';
import { amount } from '../format.ts';
import { saidQuantity, saidTemperature, withAmounts } from '../said.ts';
import type { UnitSystem } from '../types.ts';
import { capital, fixed } from '../words.ts';
import { saidSafely, type ToldValue } from './safely.ts';
import { type SizeMeasure, sizeMeasures } from './sizeMeasures.ts';
import { shortClause, stopTitle } from './targetWords.ts';

/** One measure of the box, as far as the target lets it go. */
export interface SizeRow {
  readonly key: Sized['id'];
  readonly label: string;
  /** `found`: up to a value. `free`: all of the range does. `out`: nothing in it does. */
  readonly state: Sized['edge']['state'];
  /** Before the value: "at most", "at least", "anything up to", "best at". */
  readonly lead: string;
  readonly now: string;
  readonly value: string;
  /** From the present value to that, signed. */
  readonly room: string;
  /** What ends it there, or stands in the way. */
  readonly stop: string;
  readonly film: string;
  readonly sound: string;
  readonly amounts: Amounts<'now' | 'value' | 'room' | 'film' | 'sound'>;
  /** What the told value puts into the design, and what that edit is called. */
  readonly values: Values;
  readonly edit: string;
}

export function sizingRows(question: SizingQuestion, { sized }: SizingResult, system: UnitSystem): SizeRow[] {
  const sizers = new Map(sizersOf(question.design).map((sizer) => [sizer.id, sizer]));
  return sized.flatMap((each) => {
    const sizer = sizers.get(each.id);
    return sizer ? [rowOf(question, each, sizer, system)] : [];
  });
}

function rowOf(
  { design, target }: SizingQuestion,
  { id, now, want, edge }: Sized,
  sizer: Sizer,
  system: UnitSystem,
): SizeRow {
  const measure = sizeMeasures[id];
  // The load is sized as a multiple of the present one, and told in watts.
  const scale = id === 'load' ? loadOf_W(design) : 1;
  const side = edge.state === 'out' ? 'nearest' : want === 'most' ? 'down' : 'up';
  const told = saidSafely(edge.value * scale, measure.dimension, system, side);
  const present = saidSafely(now * scale, measure.dimension, system, 'nearest');
  const stop =
    edge.state === 'found'
      ? stopTitle(edge.beyond.stop, design, system)
      : edge.state === 'out'
        ? capital(shortClause(edge.here, target, design, system))
        : 'Nothing, to the end of its range';
  return {
    key: id,
    label: measure.label,
    state: edge.state,
    lead: leads[edge.state][want],
    stop,
    ...withAmounts({
      now: present,
      value: told,
      room: roomOf(present, told, measure, system),
      ...thereOf(edge.here, system),
    }),
    values: sizer.values(Math.min(sizer.high, Math.max(sizer.low, told.SI / scale))),
    edit: `${measure.label}, ${told.text}`,
  };
}

const leads: Readonly<Record<Sized['edge']['state'], Readonly<Record<Sized['want'], string>>>> = {
  found: { most: 'at most', least: 'at least' },
  free: { most: 'anything up to', least: 'anything down to' },
  out: { most: 'best at', least: 'best at' },
};

function roomOf(now: ToldValue, to: ToldValue, measure: SizeMeasure, system: UnitSystem): Said {
  const difference = to.SI - now.SI;
  if (measure.dimension === 'ratio') {
    const points = amount(difference, 'ratio', system);
    return {
      text: signed(`${fixed(Math.abs(points), 1)}\u202fpoints`, difference),
      value: points,
      unit: 'points',
    };
  }
  const said = saidQuantity(Math.abs(difference), measure.difference ?? measure.dimension, system, 3);
  return { ...said, text: signed(said.text, difference), value: Math.sign(difference) * (said.value ?? 0) };
}

function signed(text: string, value: number): string {
  return value === 0 ? '–' : `${value > 0 ? '+' : '−'}${text}`;
}

/** Hottest film and sound where a measure ends. */
function thereOf({ judged }: Standing, system: UnitSystem): { film: Said; sound: Said } {
  if (judged === null) return { film: none('°C'), sound: none('dB(A)') };
  const { film_K, sound_dBA } = judged.outputs;
  return {
    film: saidTemperature(film_K, system),
    sound: saidQuantity(sound_dBA, 'soundLevel', system, 2),
  };
}

function none(unit: string): Said {
  return { text: '–', value: null, unit };
}

/** The row of a measure, where it was sized. */
export function rowAt(rows: readonly SizeRow[], key: SizeRow['key']): SizeRow | null {
  return rows.find((row) => row.key === key) ?? null;
}
