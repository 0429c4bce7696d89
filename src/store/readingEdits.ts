import { nominalTotal_W } from '../core/system/loadOf.ts';
import { solveSystem } from '../core/system/solveSystem.ts';
import { defaultDesign } from '../model/defaults.ts';
import type { Design } from '../model/design.ts';
import {
  type Conditions,
  conditionKeys,
  ordinaryWithin,
  placeNumbers,
  type ReadingList,
  type ReadingRow,
  readingKeys,
  readingLists,
} from '../model/readings.ts';
import { dimensionOfKey, editIn, parseIn, unitFor } from '../model/say.ts';
import { toCore } from '../model/toCore.ts';
import { placed, typed } from './edits.ts';
import { insertRow, removeRow, rowsAt } from './rows.ts';
import type { Entered } from './state.ts';
import { unitTyped } from './unitTyped.ts';

/** Path of a list of readings. */
export const listPath = (list: ReadingList) => `readings.${list}`;

/** Within what the fields of a reading take. */
const most = { load_W: 1e5, fan_V: 500 } as const;

/** As the box stands in the design: its nominal watts, its room, the supply of its first fan. */
export function presentConditions(design: Design): Conditions {
  return {
    load_W: Number(Math.min(most.load_W, nominalTotal_W(toCore(design))).toPrecision(6)),
    room_K: design.room.T_K,
    fan_V: Math.min(most.fan_V, design.fan.supply_V),
  };
}

/** What the next reading of a list is taken under, as far as anybody knows: as the one before, of its own list or of the last other one. */
export function nextConditions(design: Design, list: ReadingList): Conditions {
  const { readings } = design;
  const before = readings[list].at(-1) ?? readingLists.map((each) => readings[each].at(-1)).findLast(Boolean);
  if (before === undefined) return presentConditions(design);
  const { load_W, room_K, fan_V } = before;
  return { load_W, room_K, fan_V };
}

/** What stands there until somebody types: never taken for a reading, for its box is empty and says so. */
const blanks: Readonly<Record<ReadingList, number>> = {
  temperatures: 298.15,
  pressures: 0,
  flows: 0,
  voltages: 0,
  sounds: 0,
};

/** What the instrument will show, roughly: how far an ordinary one may be off is a share of it. */
function foreseen(design: Design, list: ReadingList): number {
  if (list === 'voltages') return nextConditions(design, list).fan_V;
  if (list !== 'flows') return blanks[list];
  const outcome = solveSystem(toCore(design));
  return outcome.ok ? outcome.air.flow_m3PerS : blanks[list];
}

/** Two digits in the unit in which the reader sees it: nobody states an instrument to more. */
function asStated(state: Entered, path: string, value: number): number {
  const dimension = dimensionOfKey(path.slice(path.lastIndexOf('.') + 1));
  const unit = unitTyped(state.units, path) ?? unitFor(dimension, state.system);
  const text = Number(editIn(value, dimension, unit)).toPrecision(2);
  const read = parseIn(`${Number(text)}`, dimension, unit, state.system);
  return read.ok && read.value > 0 ? read.value : value;
}

/** One more reading: conditions of the row before, an ordinary instrument, and an empty box for what it showed. */
export function addReading(state: Entered, list: ReadingList): Partial<Entered> | string {
  const path = listPath(list);
  const rows = rowsAt<ReadingRow>(state, path);
  const { reading, within } = readingKeys[list];
  const ordinary = ordinaryWithin(list, foreseen(state.design, list));
  const row = {
    [reading]: blanks[list],
    [within]:
      rows.at(-1)?.[within as keyof ReadingRow] ??
      asStated(state, `${path}[${rows.length}].${within}`, ordinary),
    ...nextConditions(state.design, list),
    ...(list === 'temperatures' ? nextPlace(state.design) : {}),
  };
  const inserted = insertRow(state, path, rows.length, row);
  if (typeof inserted === 'string') return inserted;
  const next = { ...state, ...inserted };
  return { ...inserted, ...typed(next, `${path}[${rows.length}].${reading}`, '') };
}

/** The same kind of place, one resistor or sink further on; the first film where there is none before. */
function nextPlace(design: Design) {
  const last = design.readings.temperatures.at(-1);
  if (last === undefined) return { where: 'onFilm', number: 1, settled: true, time_s: 1800 } as const;
  const { where, number, settled, time_s } = last;
  const next = placeNumbers(design, where).find((each) => each > number) ?? number;
  return { where, number: next, settled, time_s };
}

export function removeReading(state: Entered, list: ReadingList, index: number): Partial<Entered> | string {
  return removeRow(state, listPath(list), index);
}

/** Watts, room and fan volts of this row for all rows below it. */
export function sameConditionsBelow(state: Entered, list: ReadingList, index: number): Partial<Entered> {
  const rows = rowsAt<ReadingRow>(state, listPath(list));
  const row = rows[index];
  if (row === undefined) return {};
  const below = rows
    .slice(index + 1)
    .flatMap((_, after) =>
      conditionKeys.map((key) => [`${listPath(list)}[${index + 1 + after}].${key}`, row[key]] as const),
    );
  return placed(state, Object.fromEntries(below));
}

/** Handbook values again in place of what was fitted; a fitted width of the leak stays, for it is a measure of the box. */
export function withoutFit({ design, drafts }: Entered): Partial<Entered> {
  const values = Object.entries(defaultDesign.fitted).map(([key, value]) => [`fitted.${key}`, value]);
  return placed({ design, drafts } as Entered, Object.fromEntries(values));
}
