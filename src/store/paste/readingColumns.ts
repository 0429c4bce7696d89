import type { Column } from '../../io/columns.ts';
import { type ReadPlace, readPlace } from './readingPlace.ts';

/** What a column of readings holds. */
export type Means =
  | 'where'
  | 'number'
  | 'reading'
  | 'unit'
  | 'within'
  | 'load_W'
  | 'room_K'
  | 'fan_V'
  | 'time';

/** One column: what it holds, or of which place its cells are readings. */
export interface ReadingColumn {
  readonly written: string;
  readonly unit: string | null;
  readonly means: Means | null;
  readonly place: ReadPlace | null;
}

/** Without a head the columns mean these, in turn; the last ones may be missing. */
export const orderWithoutHead: readonly Means[] = [
  'where',
  'reading',
  'within',
  'load_W',
  'room_K',
  'fan_V',
  'time',
];

/** What people write at the head of such a column. */
const heads: readonly (readonly [Means, RegExp])[] = [
  ['where', /^(?:where|place|point|position|location|spot)s?$/],
  ['number', /^(?:number|resistor or sink)$/],
  ['reading', /^(?:readings?|values?|measured|meas\.?|shown)$/],
  ['unit', /^units?$/],
  ['within', /^(?:within|uncertainty|error|accuracy|tolerance|±.*|\+\/?-.*|u\s*95|u)$/],
  ['load_W', /^(?:watts?|load|power|p|w)$/],
  ['room_K', /^(?:room|ambient|t[ _]?(?:room|amb|ambient))(?: temperature)?$/],
  ['fan_V', /^(?:fan volts|fan voltage|fan supply|supply|volts|voltage|fan|v|u fan)$/],
  ['time', /^(?:time|after|elapsed|t|duration)$/],
];

/** A unit in words after a name that readers of heads leave alone, for it is a word as well: "time min". */
const timeInWords = /^(time|after|elapsed)\s*(?:in\s+)?(s|sec|min|h)$/i;

export function readingColumn(column: Column): ReadingColumn {
  const [, time, unit] = timeInWords.exec(column.written) ?? [];
  if (time !== undefined && unit !== undefined)
    return { written: column.written, unit, means: 'time', place: null };
  const { written } = column;
  const named = meansOf(column.name) ?? meansOf(bare(written));
  const means = named ?? null;
  return { written, unit: column.unit, means, place: means === null ? readPlace(bare(written)) : null };
}

function meansOf(name: string): Means | undefined {
  const plain = name.trim().toLowerCase();
  return heads.find(([, pattern]) => pattern.test(plain))?.[0];
}

/** Without what stands in brackets or behind a comma: a unit. */
function bare(written: string): string {
  return written
    .replace(/[([{].*$/, '')
    .replace(/,.*$/, '')
    .trim();
}
