import type { Design } from '../model/design.ts';
import { type Field, fields } from '../model/fields.ts';
import { getAt } from '../model/path.ts';
import { sayInput } from '../model/sayInput.ts';
import type { InputSheet, UnitSystem } from './types.ts';

/** Parts with inputs of their own, in the order of the form: the job, the way of the air, the heat, what bounds it. */
export const formParts = [
  ['room', 'Room'],
  ['load', 'Load'],
  ['inlet', 'Inlet'],
  ['fan', 'Fan'],
  ['plenum', 'Plenum'],
  ['baffle', 'Baffle'],
  ['sink', 'Sinks'],
  ['bond', 'Bond lines'],
  ['secondFace', 'Second face'],
  ['box', 'Box'],
  ['outlet', 'Outlet'],
  ['limits', 'Limits'],
  ['cutting', 'Panels to cut'],
  ['fitted', 'Fit to readings'],
] as const;

const readingLists = [
  ['temperatures', 'Temperature readings'],
  ['pressures', 'Pressure readings'],
  ['flows', 'Flow readings'],
  ['voltages', 'Readings of fan volts'],
  ['sounds', 'Sound readings'],
] as const;

/** As many columns of values as a page holds. */
const mostColumns = 4;

/** Every field of the design, in the reader's units: what somebody needs who builds the file again from paper. */
export function everyInput(design: Design, system: UnitSystem): InputSheet[] {
  const say = (path: string) => sayInput(path, getAt(design, path), system, { parts: design.parts });
  const own = (prefix: string) =>
    fields.filter(
      ({ pattern }) => pattern.startsWith(prefix) && !pattern.slice(prefix.length).includes('[]'),
    );
  const single = (id: string, title: string, list: readonly Field[]): InputSheet => ({
    id,
    title,
    heads: ['Input', 'Value'],
    rows: list.map((field) => [field.label, say(field.pattern)]),
  });
  /** One column a row of the list, for lists with many fields. */
  const beside = (list: string, title: string, count: number): InputSheet[] =>
    chunks(count).map((indices) => ({
      id: `${list}${indices[0]}`,
      title,
      heads: ['Input', ...indices.map((i) => `No. ${i + 1}`)],
      rows: own(`${list}[].`).map((field) => [
        field.label,
        ...indices.map((i) => say(field.pattern.replace('[]', `[${i}]`))),
      ]),
    }));
  /** One row a row of the list, for lists with few fields. `list` is a path that may hold indices itself. */
  const below = (list: string, title: string, count: number): InputSheet[] => {
    const columns = own(`${list.replace(/\[\d+\]/g, '[]')}[].`);
    if (count === 0) return [];
    return [
      {
        id: list,
        title,
        heads: ['No.', ...columns.map(({ label }) => label)],
        rows: Array.from({ length: count }, (_, i) => [
          `${i + 1}`,
          ...columns.map(({ pattern }) => say(`${list}[${i}].${lastKey(pattern)}`)),
        ]),
      },
    ];
  };
  return [
    single(
      'block',
      'Title block',
      fields.filter(({ pattern }) => !/[.[]/.test(pattern)),
    ),
    ...formParts.map(([key, title]) => single(key, title, own(`${key}.`))),
    ...beside('parts', 'Kinds of resistor', design.parts.length),
    ...below('positions', 'Resistors along the row', design.positions.length),
    ...below('fan.curve', 'Curve of the fan', design.fan.curve.length),
    ...beside('moreFans', 'Other kinds of fan', design.moreFans.length),
    ...design.moreFans.flatMap(({ curve }, i) =>
      below(`moreFans[${i}].curve`, `Curve of other fan ${i + 1}`, curve.length),
    ),
    ...below('extras', 'Extra losses', design.extras.length),
    ...design.extras.flatMap(({ points }, i) =>
      below(`extras[${i}].points`, `Measured points of extra loss ${i + 1}`, points.length),
    ),
    ...below(
      'spreads',
      'Spreads of your own; sizes as a share or in the SI unit of the input',
      design.spreads.length,
    ),
    ...readingLists.flatMap(([key, title]) => below(`readings.${key}`, title, design.readings[key].length)),
  ];
}

function lastKey(pattern: string): string {
  return pattern.slice(pattern.lastIndexOf('.') + 1);
}

/** Numbers from 0 in groups that are as even as they can be. */
function chunks(count: number): number[][] {
  const groups = Math.ceil(count / mostColumns);
  return Array.from({ length: groups }, (_, g) => {
    const from = Math.floor((g * count) / groups);
    const to = Math.floor(((g + 1) * count) / groups);
    return Array.from({ length: to - from }, (_unused, i) => from + i);
  });
}
