import { isBare, isValue } from '../../io/cellNumbers.ts';
import type { Column, Columns } from '../../io/columns.ts';
import { parseQuantity } from '../../units/parseQuantity.ts';
import { findSpelling } from '../../units/spellings.ts';

/** Where flow and pressure stand in a table. */
export type CurveColumns =
  | { readonly ok: true; readonly flow: number; readonly pressure: number }
  | { readonly ok: false; readonly reason: string };

interface Role {
  readonly noun: string;
  readonly dimension: 'volumeFlow' | 'pressure';
  readonly unit: string;
  /** What people write at the head of such a column. */
  readonly names: RegExp;
  /** What sounds like it and is something else. */
  readonly never: RegExp;
  readonly remedy: string;
}

const flow: Role = {
  noun: 'flow',
  dimension: 'volumeFlow',
  unit: 'm3/h',
  names: /flow|\bair ?volume\b|\bvolume rate\b|^(?:q|v̇|vdot)(?:[ _]?v)?$/i,
  never: /mass|velocity|speed|factor/i,
  remedy: 'Name it flow or Q, or put a unit such as m³/h at its head.',
};

const pressure: Role = {
  noun: 'static pressure',
  dimension: 'pressure',
  unit: 'Pa',
  names: /pressure|^(?:Δ|d|delta ?)?p(?:[ _]?(?:s|f|sf|st|stat|static))?$|^static$/i,
  never: /total|dynamic|velocity|ambient|barometric|atmospheric|factor/i,
  remedy: 'Name it pressure or p, or put a unit such as Pa at its head.',
};

/**
 * Which column is flow and which is pressure, in whatever order and whatever stands beside them: by the unit at the head
 * or in the cells, else by the name. Two that fit, or none, are refused, and what was found is listed.
 */
export function curveColumns(columns: Columns): CurveColumns {
  const { head, rows } = columns;
  const width = rows[0]?.length ?? 0;
  if (width < 2) return refuse('This table has one column; a curve needs two, flow and pressure.');
  const kinds = Array.from({ length: width }, (_, at) => kindOf(columns, at));
  if (head === null) return withoutHead(rows, kinds);
  const [forFlow, forPressure] = [flow, pressure].map((role) => pick(role, head, kinds));
  if (typeof forFlow !== 'number') return refuse(forFlow ?? '');
  if (typeof forPressure !== 'number') return refuse(forPressure ?? '');
  return { ok: true, flow: forFlow, pressure: forPressure };
}

type Kind = 'flow' | 'pressure' | 'other' | 'unknown';

/** What a column measures, by its unit alone. */
function kindOf({ head, rows }: Columns, at: number): Kind {
  const unit = head?.[at]?.unit ?? null;
  const is = ({ dimension, unit: key }: Role) =>
    unit === null
      ? rows.slice(0, 200).some((row) => hasUnit(row[at] ?? '', dimension, key))
      : findSpelling(dimension, unit) !== null;
  if (is(flow)) return 'flow';
  if (is(pressure)) return 'pressure';
  return unit === null ? 'unknown' : 'other';
}

function hasUnit(cell: string, dimension: Role['dimension'], unit: string): boolean {
  return cell !== '' && !isBare(cell) && parseQuantity(cell, dimension, unit).ok;
}

/** @returns why there is not one, in a string */
function pick(role: Role, head: readonly Column[], kinds: readonly Kind[]): number | string {
  const kind = role === flow ? 'flow' : 'pressure';
  const may = [...head.keys()].filter((at) => !role.never.test(head[at]?.name ?? ''));
  const byUnit = may.filter((at) => kinds[at] === kind);
  const byName = may.filter((at) => kinds[at] === 'unknown' && names(role, head, at));
  const fits = byUnit.length > 0 ? byUnit : byName;
  const isStatic = fits.filter((at) => /static|^p_?(?:s|st|stat|sf)\b/i.test(head[at]?.name ?? ''));
  const [one, other] = isStatic.length === 1 ? isStatic : fits;
  if (one === undefined) return `No column is the ${role.noun} for certain. ${list(head)} ${role.remedy}`;
  if (other !== undefined)
    return `${fits.length} columns could be the ${role.noun}: ${quoted(fits.map((at) => head[at]?.written ?? ''))}. Leave one of them.`;
  const strange = strangeUnit(head[one]);
  return strange === null ? one : `“${strange}” at the head of the ${role.noun} is no unit known here.`;
}

/** What stands in brackets where a unit would, and is none. */
function strangeUnit(column: Column | undefined): string | null {
  if (column === undefined || column.unit !== null) return null;
  const [, square, round] = /(?:\[([^\]]+)\]|\(([^)\s]+)\))$/.exec(column.written) ?? [];
  const isWord = round !== undefined && /^(?:static|stat|fan|air|volume|measured|mean|avg)$/i.test(round);
  return square ?? (isWord ? null : (round ?? null));
}

/** A capital P is power as often as pressure, and beside more columns it is not certain. */
function names({ names, noun }: Role, head: readonly Column[], at: number): boolean {
  const name = head[at]?.name ?? '';
  return names.test(name) && !(noun === pressure.noun && name === 'P' && head.length > 2);
}

/** Two columns are flow and pressure in turn, unless units in their cells say otherwise. */
function withoutHead(rows: Columns['rows'], kinds: readonly Kind[]): CurveColumns {
  const [flowAt, pressureAt] = (['flow', 'pressure'] as const).map((kind) => kinds.indexOf(kind));
  const found = kinds.filter((kind) => kind === 'flow' || kind === 'pressure');
  if (found.length === 2 && flowAt !== -1 && pressureAt !== -1)
    return { ok: true, flow: flowAt ?? 0, pressure: pressureAt ?? 1 };
  if (kinds.length > 2)
    return refuse(
      `This table has ${kinds.length} columns and no head. Put a line above that names flow and pressure, or take these two columns alone.`,
    );
  if (!rows.some((row) => row.every(isValue))) return refuse('No two columns of numbers found.');
  if (found.length === 2) return refuse(`Both columns are a ${found[0]} by their units.`);
  const isTurned = kinds[0] === 'pressure' || kinds[1] === 'flow';
  return { ok: true, flow: isTurned ? 1 : 0, pressure: isTurned ? 0 : 1 };
}

function list(head: readonly Column[]): string {
  return `Found: ${quoted(head.map(({ written }) => written))}.`;
}

/** The first few, none of them longer than a line. */
export function quoted(texts: readonly string[]): string {
  const most = 8;
  const shown = texts.slice(0, most).map((text) => `“${text.length > 40 ? `${text.slice(0, 39)}…` : text}”`);
  return `${shown.join(', ')}${texts.length > most ? ` and ${texts.length - most} more` : ''}`;
}

function refuse(reason: string): CurveColumns {
  return { ok: false, reason };
}
