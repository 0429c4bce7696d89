import type { Place, ReadingList } from '../../model/readings.ts';

/** Where something was read: a list, and for temperatures a place with the number of its resistor or sink. */
export interface ReadPlace {
  readonly list: ReadingList;
  readonly where: Place | null;
  /** `null` where none is said. */
  readonly number: number | null;
}

type Kind = Place | Exclude<ReadingList, 'temperatures'>;

const kinds: readonly (readonly [Kind, readonly string[]])[] = [
  ['onFilm', ['film', 'films', 'hotspot']],
  ['onTerminal', ['terminal', 'terminals', 'solder', 'joint']],
  ['onSink', ['sink', 'heatsink', 'plate', 'base']],
  ['onSheet', ['sheet', 'wall', 'outside', 'panel']],
  ['inExhaust', ['exhaust', 'outlet']],
  ['pressures', ['plenum', 'pressure', 'static']],
  ['flows', ['flow', 'airflow']],
  ['voltages', ['volts', 'volt', 'voltage']],
  ['sounds', ['sound', 'noise']],
];

/** Words that change nothing. */
const filling = [
  'of',
  'the',
  'at',
  'on',
  'in',
  'beside',
  'no',
  'number',
  'temperature',
  'temp',
  't',
  'air',
  'fan',
  'level',
  'measured',
  'read',
  'heat',
  'side',
];

/**
 * A place as people write it: "film 3", "R2 film", "sink_2", "sheet beside sink 4", "exhaust", "plenum pressure", "flow",
 * "volts at the fan", "sound". Only what can be nothing else: "R2" alone may be a film or a terminal, "S3" a sink or a
 * sensor.
 * @returns `null` where it is not certain
 */
export function readPlace(text: string): ReadPlace | null {
  const words = wordsOf(text);
  const numbers = words.filter((word) => /^\d+$/.test(word)).map(Number);
  const found = new Set<Kind>();
  for (const [at, word] of words.entries()) {
    const kind = kinds.find(([, names]) => names.includes(word))?.[0];
    if (kind !== undefined) found.add(kind);
    else if (!isFilling(word, words[at + 1])) return null;
  }
  // "Sheet beside sink 4" names the sink only to say where.
  if (found.has('onSheet')) found.delete('onSink');
  const [kind, another] = found;
  if (kind === undefined || another !== undefined || numbers.length > 1) return null;
  const number = numbers[0] ?? null;
  if (kind.startsWith('on') || kind === 'inExhaust')
    return { list: 'temperatures', where: kind as Place, number };
  return number === null ? { list: kind as ReadingList, where: null, number } : null;
}

/** R and resistor count where a number follows. */
function isFilling(word: string, next: string | undefined): boolean {
  if (/^\d+$/.test(word) || filling.includes(word)) return true;
  return ['r', 'resistor', 'chip'].includes(word) && (next === undefined || /^\d+$/.test(next));
}

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/([a-z])(?=\d)|(\d)(?=[a-z])/g, '$1$2 ')
    .split(/[^\p{L}\d]+/u)
    .filter((word) => word !== '');
}
