import { type Columns, readColumns, withUnit } from '../../io/columns.ts';
import type { Design } from '../../model/design.ts';
import { rowLimits } from '../../model/fields.ts';
import { labelOfOption } from '../../model/options.ts';
import { type Path, setAt } from '../../model/path.ts';
import {
  type Conditions,
  conditionKeys,
  ordinaryWithin,
  type Place,
  placeNumbers,
  type ReadingList,
  readingCount,
  readingKeys,
} from '../../model/readings.ts';
import { parseIn } from '../../model/say.ts';
import { listPath, nextConditions } from '../readingEdits.ts';
import { readText } from '../readText.ts';
import type { DesignActions, Entered } from '../state.ts';
import { rememberUnit, unitTyped } from '../unitTyped.ts';
import { type Means, orderWithoutHead, type ReadingColumn, readingColumn } from './readingColumns.ts';
import { type ReadPlace, readPlace } from './readingPlace.ts';
import { tooLong } from './tableSize.ts';
import { refused, type Told, taken } from './told.ts';

/** A cell that cannot be taken: the whole table is refused, and nothing of it is lost. */
class Refused extends Error {}

/** A row ready for its list, and the units in which its cells were written. */
interface Taken {
  readonly list: ReadingList;
  readonly row: Readonly<Record<string, unknown>>;
  readonly units: Readonly<Record<string, string>>;
}

/** One line of the table, by what its cells mean. */
interface Line {
  readonly number: number;
  readonly cells: ReadonlyMap<Means, { readonly text: string; readonly unit: string | null }>;
  readonly readings: readonly { readonly place: ReadPlace; readonly text: string; readonly head: string }[];
}

/**
 * Readings from a table of text, put behind those that are there. Either one reading a row, with a column that says where
 * it was read; or several a row, each under the name of its place, as a warm-up is written down. Heads may stand in any
 * order; without them the columns are `orderWithoutHead`. One cell that does not read refuses the table, and the sentence
 * says which.
 */
export function pasteReadings(apply: DesignActions['apply'], text: string, file?: string): Told {
  const tooMuch = tooLong(text);
  if (tooMuch !== null) return refused(tooMuch);
  const read = readColumns(text);
  if (!read.ok) return refused(read.reason);
  let count = 0;
  const refusal = apply(
    (entered) => {
      const placed = placeReadings(entered, read.columns);
      if (typeof placed !== 'string' && placed.design)
        count = readingCount(placed.design) - readingCount(entered.design);
      return placed;
    },
    file === undefined ? 'Readings pasted' : 'Readings opened',
  );
  return refusal === null
    ? taken(`${count === 1 ? 'One reading' : `${count} readings`} taken over.`)
    : refused(refusal);
}

function placeReadings(state: Entered, { head, rows }: Columns): Partial<Entered> | string {
  try {
    const columns = columnsOf(head?.map(readingColumn) ?? null, rows[0]?.length ?? 0);
    return placedBehind(state, takeRows(state, columns, rows));
  } catch (refusal) {
    if (refusal instanceof Refused) return refusal.message;
    throw refusal;
  }
}

/** The columns, each known and none twice. */
function columnsOf(named: readonly ReadingColumn[] | null, width: number): readonly ReadingColumn[] {
  const columns =
    named ??
    Array.from({ length: width }, (_, at) => ({
      written: '',
      unit: null,
      means: orderWithoutHead[at] ?? null,
      place: null,
    }));
  for (const [at, column] of columns.entries()) {
    if (column.means === null && column.place === null)
      throw new Refused(
        named === null
          ? `Without a head there may be ${orderWithoutHead.length} columns at most: where, reading, within, watts, room, fan volts, time.`
          : `The column “${column.written}” is not known. A head may name where, reading, within, watts, room, fan volts, time, or a place such as film 3, sink 2, terminal 1, sheet 2, exhaust, plenum pressure, flow, volts at the fan, sound.`,
      );
    const twice = columns.findIndex(({ means }) => means !== null && means === column.means);
    if (column.means !== null && twice < at)
      throw new Refused(`Two columns say the same: “${columns[twice]?.written}” and “${column.written}”.`);
  }
  const isWide = columns.some(({ place }) => place !== null);
  const isLong = columns.some(({ means }) => means === 'reading');
  if (isWide && isLong)
    throw new Refused(
      'Readings stand in a column of their own or under the names of their places, not both.',
    );
  if (!isWide && !isLong)
    throw new Refused('No column of readings found: name one “reading”, or name columns by their places.');
  return columns;
}

function takeRows(
  state: Entered,
  columns: readonly ReadingColumn[],
  rows: readonly (readonly string[])[],
): Taken[] {
  if (rows.length === 0) throw new Refused('There is no row below the head of this table.');
  const taken: Taken[] = [];
  let above: Partial<Conditions> = {};
  for (const [at, cells] of rows.entries()) {
    const line = lineOf(columns, cells, at + 1);
    above = { ...above, ...conditionsIn(state, line) };
    for (const reading of line.readings) taken.push(takeReading(state, line, reading, above));
  }
  if (taken.length === 0) throw new Refused('There is no reading in this table.');
  return taken;
}

const isBlank = (text: string) => /^(?:|[-–—]|n\/?a|none)$/i.test(text.trim());

function lineOf(columns: readonly ReadingColumn[], cells: readonly string[], number: number): Line {
  const found = new Map<Means, { text: string; unit: string | null }>();
  const wide: { place: ReadPlace; text: string; head: string }[] = [];
  for (const [at, { means, place, unit, written }] of columns.entries()) {
    const text = (cells[at] ?? '').trim();
    if (isBlank(text)) continue;
    if (means !== null) found.set(means, { text: withUnit(text, unit), unit });
    if (place !== null) wide.push({ place, text: withUnit(text, unit), head: written });
  }
  const reading = found.get('reading');
  if (reading === undefined) return { number, cells: found, readings: wide };
  const text = withUnit(reading.text, found.get('unit')?.text ?? null);
  const place = placeOf(found.get('where')?.text, text, found.get('number')?.text, number);
  return { number, cells: found, readings: [{ place, text, head: '' }] };
}

const refuse = (line: number, reason: string): never => {
  throw new Refused(`Row ${line}: ${reason}`);
};

/** By its name; where there is none, by the unit of the reading, which tells all but where a temperature was read. */
function placeOf(
  where: string | undefined,
  reading: string,
  number: string | undefined,
  line: number,
): ReadPlace {
  if (where !== undefined) {
    const place = readPlace(number === undefined ? where : `${where} ${number}`);
    return (
      place ??
      refuse(
        line,
        `“${where}” is no place that is known for certain. Write film 3, terminal 3, sink 2, sheet 2, exhaust, plenum pressure, flow, volts at the fan or sound.`,
      )
    );
  }
  const byUnit: readonly (readonly [ReadingList, Parameters<typeof parseIn>[1]])[] = [
    ['pressures', 'pressure'],
    ['flows', 'volumeFlow'],
    ['voltages', 'voltage'],
    ['sounds', 'soundLevel'],
  ];
  const isBare = /[\d.,]$/.test(reading);
  const list = isBare
    ? undefined
    : byUnit.find(([, dimension]) => parseIn(reading, dimension, undefined, 'metric').ok)?.[0];
  if (list !== undefined) return { list, where: null, number: null };
  return refuse(line, `it is not said where “${reading}” was read.`);
}

function conditionsIn(state: Entered, { cells, number }: Line): Partial<Conditions> {
  return Object.fromEntries(
    conditionKeys.flatMap((key) => {
      const cell = cells.get(key);
      return cell === undefined
        ? []
        : [[key, readCell(state, `readings.temperatures[0].${key}`, cell.text, number).value]];
    }),
  );
}

function takeReading(
  state: Entered,
  line: Line,
  { place, text }: Line['readings'][number],
  conditions: Partial<Conditions>,
): Taken {
  const { list } = place;
  const keys = readingKeys[list];
  const [value = '', ...after] = text.split(/\s*(?:±|\+\/-|\+-)\s*/);
  const unitAtEnd = /(?<=[\d.,]\s*)[^\d\s.,±][^±]*$/.exec(text)?.[0].trim() ?? null;
  const path = `${listPath(list)}[0].${keys.reading}`;
  const reading = readCell(state, path, withUnit(value, unitAtEnd), line.number);
  const widths = line.cells.get('within')?.text ?? after[0];
  const within = readWithin(state, list, widths, reading, line.number);
  const units = {
    [keys.reading]: reading.unit,
    ...(within.unit === null ? {} : { [keys.within]: within.unit }),
  };
  const row = {
    ...(list === 'temperatures' ? placeFields(state.design, place, line.number) : {}),
    [keys.reading]: reading.value,
    [keys.within]: within.value,
    ...nextConditions(state.design, list),
    ...conditions,
    ...timeFields(state, list, line),
  };
  return { list, row, units };
}

interface Cell {
  readonly value: number;
  readonly unit: string;
}

function readCell(state: Entered, path: Path, text: string, line: number): Cell {
  const read = readText(path, text, unitTyped(state.units, path), state.system);
  if (!read.ok) return refuse(line, read.reason);
  return { value: read.value as number, unit: read.unit ?? '' };
}

/** In the unit of the reading, or as a share of it; an ordinary instrument's where nothing is said. */
function readWithin(
  state: Entered,
  list: ReadingList,
  text: string | undefined,
  reading: Cell,
  line: number,
): { readonly value: number; readonly unit: string | null } {
  const path = `${listPath(list)}[0].${readingKeys[list].within}`;
  if (text === undefined) return { value: ordinaryWithin(list, reading.value), unit: null };
  const plain = text.replace(/^(?:±|\+\/?-)\s*/, '');
  const share = list === 'temperatures' ? null : /^(.*)%$/.exec(plain)?.[1];
  if (typeof share === 'string') {
    const read = parseIn(`${share} %`, 'ratio', undefined, state.system);
    if (!read.ok) return refuse(line, read.reason);
    const value = Number((read.value * Math.abs(reading.value)).toPrecision(6));
    return value > 0 ? { value, unit: null } : refuse(line, `“${text}” of this reading is nothing.`);
  }
  const unit = list === 'temperatures' && reading.unit === 'degC' ? 'K' : reading.unit;
  const read = readText(path, plain, unit, state.system);
  if (!read.ok) return refuse(line, read.reason);
  return { value: read.value as number, unit: read.unit };
}

const named: Readonly<Record<Place, string>> = {
  onFilm: 'resistor',
  onTerminal: 'resistor',
  onSink: 'sink',
  onSheet: 'sink',
  inExhaust: '',
};

function placeFields(design: Design, { where, number }: ReadPlace, line: number) {
  const place = where ?? 'inExhaust';
  const numbers = placeNumbers(design, place);
  const chosen = place === 'inExhaust' ? 1 : (number ?? (numbers.length === 1 ? numbers[0] : undefined));
  const word = labelOfOption(place).replace(/,.*$/, '');
  const allowed = `${word} ${numbers[0]} to ${word} ${numbers.at(-1)}`;
  if (chosen === undefined)
    return refuse(line, `the ${word} of which ${named[place]}? There are ${allowed}.`);
  if (!numbers.includes(chosen)) return refuse(line, `there is no ${word} ${chosen}. There are ${allowed}.`);
  return { where: place, number: chosen };
}

const isSettled = (text: string) => /^(?:settled|steady|end|final|yes|∞)$/i.test(text);
/** Half an hour, for a row that may be turned into a timed one later. */
const laterTime_s = 1800;

/** A time makes a reading of the warm-up; nothing, or “settled”, one of the box at rest. */
function timeFields(state: Entered, list: ReadingList, { cells, number }: Line) {
  const text = cells.get('time')?.text;
  const isTimed = text !== undefined && !isSettled(text);
  if (list !== 'temperatures') {
    if (isTimed)
      return refuse(
        number,
        'only temperatures are followed through the warm-up; pressure, flow, volts and sound are taken as settled. Leave the time empty there.',
      );
    return {};
  }
  if (!isTimed) return { settled: true, time_s: laterTime_s };
  return { settled: false, time_s: readTime_s(state, text, number) };
}

function readTime_s(state: Entered, text: string, line: number): number {
  const [, hours, minutes, seconds = '0'] = /^(\d+):([0-5]\d)(?::([0-5]\d))?$/.exec(text) ?? [];
  const plain =
    hours === undefined ? text : `${3600 * Number(hours) + 60 * Number(minutes) + Number(seconds)} s`;
  if (/^[\d.,]+$/.test(plain))
    return refuse(line, `a time needs a unit: “${text} min” or “${text} s”, in the cell or in the head.`);
  return readCell(state, 'readings.temperatures[0].time_s', plain, line).value;
}

/** All rows behind those of their lists, which then show the units of the table. */
function placedBehind(state: Entered, taken: readonly Taken[]): Partial<Entered> {
  let { design, units } = state;
  for (const { list, row, units: written } of taken) {
    const path = listPath(list);
    const rows = design.readings[list];
    const { most } = rowLimits(path);
    if (rows.length >= most) {
      const wanted = state.design.readings[list].length + taken.filter((each) => each.list === list).length;
      throw new Refused(`That would make ${wanted} ${nouns[list]}; at most ${most} fit.`);
    }
    design = setAt(design, path, [...rows, row]);
    for (const [key, unit] of Object.entries(written))
      units = rememberUnit(units, `${path}[${rows.length}].${key}`, unit);
  }
  return { design, units };
}

const nouns: Readonly<Record<ReadingList, string>> = {
  temperatures: 'temperatures',
  pressures: 'pressures',
  flows: 'flows',
  voltages: 'readings of fan volts',
  sounds: 'readings of sound',
};
