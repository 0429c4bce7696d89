import { isBare } from '../../io/cellNumbers.ts';
import { type Columns, readColumns, withUnit } from '../../io/columns.ts';
import { checkDesign } from '../../model/check.ts';
import { getAt } from '../../model/path.ts';
import { dimensionOfKey, unitFor, unitSymbol } from '../../model/say.ts';
import { typed } from '../edits.ts';
import type { DesignActions, Entered } from '../state.ts';
import { unitTyped } from '../unitTyped.ts';
import { curveColumns, quoted } from './curveColumns.ts';
import { countMisfit, pastePoints } from './pastePoints.ts';
import { tooLong } from './tableSize.ts';
import { refused, type Told, taken } from './told.ts';

/** A table takes the place of all points of a curve. @param file the name of the file it came from */
export function pasteCurve(apply: DesignActions['apply'], list: string, text: string, file?: string): Told {
  const tooMuch = tooLong(text);
  if (tooMuch !== null) return refused(tooMuch);
  const read = readColumns(text);
  if (!read.ok) return refused(read.reason);
  const found = curveColumns(read.columns);
  if (!found.ok) return refused(found.reason);
  const { flow, pressure } = found;
  const rows = read.columns.rows.filter((row) => row[flow] !== '' || row[pressure] !== '');
  const misfit = countMisfit(list, rows.length);
  if (misfit !== null) return refused(misfit);
  const curve: Curve = { columns: { ...read.columns, rows }, flow, pressure };
  let said = '';
  const refusal = apply(
    (entered) => {
      const next = pastePoints(entered, list, cellsOf(curve));
      if (typeof next === 'string') return next;
      const whole = { ...entered, ...next };
      const sourced = withSource(whole, list, file);
      said = [
        ...howRead(whole, list, curve),
        ...faults(whole, list),
        ...(sourced === whole ? [] : [fromFile]),
      ].join(' ');
      return sourced;
    },
    file === undefined ? 'Curve pasted' : 'Curve opened',
  );
  return refusal === null ? taken(said) : refused(refusal);
}

interface Curve {
  readonly columns: Columns;
  readonly flow: number;
  readonly pressure: number;
}

function cellsOf({ columns: { head, rows }, flow, pressure }: Curve): [string, string][] {
  const cell = (row: readonly string[], at: number) => withUnit(row[at] ?? '', head?.[at]?.unit ?? null);
  return rows.map((row) => [cell(row, flow), cell(row, pressure)]);
}

/** Which column was taken for what, and in which unit where the table names none. */
function howRead(entered: Entered, list: string, { columns, flow, pressure }: Curve): string[] {
  const { head, rows } = columns;
  const count = `${rows.length} ${rows.length === 1 ? 'point' : 'points'}`;
  const from = [flow, pressure].map((at) =>
    head === null ? `column ${at + 1}` : quoted([head[at]?.written ?? '']),
  );
  const bare = (
    [
      ['flow_m3PerS', flow],
      ['dp_Pa', pressure],
    ] as const
  )
    .filter(([, at]) => head?.[at]?.unit == null && rows.some((row) => isBare(row[at] ?? '')))
    .map(([key]) => unitAt(entered, `${list}[0].${key}`));
  return [
    `${count} taken over: flow from ${from[0]}, pressure from ${from[1]}.`,
    ...(bare.length === 0 ? [] : [`Numbers without a unit are in ${bare.join(' and ')}.`]),
  ];
}

function unitAt({ units, system }: Entered, path: string): string {
  const dimension = dimensionOfKey(path);
  return unitSymbol(dimension, unitTyped(units, path) ?? unitFor(dimension, system));
}

/** Nothing is mended: what does not read or does not fit is counted here and told at its cell. */
function faults({ design, drafts }: Entered, list: string): string[] {
  const unread = Object.entries(drafts).filter(([path, { problem }]) => problem !== null && isIn(path, list));
  const clashing = checkDesign(design).filter(
    ({ path }) => isIn(path, list) && (drafts[path]?.problem ?? null) === null,
  );
  const count = unread.length + clashing.length;
  if (count === 0) return [];
  return [
    `${count === 1 ? 'One cell does' : `${count} cells do`} not fit; the first is told under the table.`,
  ];
}

function isIn(path: string, list: string): boolean {
  return path.startsWith(`${list}[`);
}

const fromFile = 'The name of the file stands under “Curve from”.';

/** Where a curve comes from is told by the file it was opened from, unless its owner has told it. */
function withSource(entered: Entered, list: string, file: string | undefined): Entered {
  const path = list.replace(/\.curve$/, '.curveSource');
  const isEmpty = getAt(entered.design, path) === '' && (entered.drafts[path]?.text ?? '') === '';
  return file === undefined || !isEmpty
    ? entered
    : { ...entered, ...typed(entered, path, file.slice(0, 200)) };
}
