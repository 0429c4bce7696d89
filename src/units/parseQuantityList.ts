import { type Dimension, dimensions, type Unit, unitOf } from './dimensions.ts';
import { niceStep } from './niceStep.ts';
import { describeProblem, parseQuantity } from './parseQuantity.ts';
import { type ListPiece, splitList } from './splitList.ts';

/** A value in SI and the unit it was typed in. */
export interface ListValue {
  readonly value: number;
  readonly unit: string;
}

export type ListResult =
  | { readonly ok: true; readonly values: readonly ListValue[] }
  /** In words, for the reader. */
  | { readonly ok: false; readonly reason: string };

/** Nobody types more than this into a field; it bounds the work. */
const longestText = 1000;

/** Steps of a range that names none. */
const usualSteps = 10;

/**
 * A list of quantities as people type it → SI, in the order typed: `0, 1/32 in, 0.8 mm, 1.5`, `0 to 4 mm by 0.5`, or
 * both together. A bare number is in the unit named last before it, or else in the first one named after it, or else in
 * `defaultUnit`. A range without a step is cut into about ten round ones.
 * @param most values that may come of it
 */
export function parseQuantityList(
  text: string,
  dimension: Dimension,
  defaultUnit: string,
  most: number,
): ListResult {
  const reads = (part: string) => parseQuantity(part, dimension, defaultUnit).ok;
  if (text.length > longestText)
    return { ok: false, reason: `This has ${text.length} characters; at most ${longestText} fit.` };
  const pieces = splitList(text, reads);
  if (pieces.length === 0) {
    const nothing = parseQuantity('', dimension, defaultUnit);
    return { ok: false, reason: nothing.ok ? '' : describeProblem(nothing) };
  }
  const units = unitsOf(pieces.flatMap(textsOf), dimension, defaultUnit).values();
  const next = (part: string) => read(part, dimension, units.next().value ?? defaultUnit);
  const values: ListValue[] = [];
  for (const piece of pieces) {
    const found = piece.kind === 'one' ? [next(piece.text)] : spread(piece, next, dimension, most);
    if (typeof found === 'string') return { ok: false, reason: found };
    for (const value of found) {
      if (typeof value === 'string') return { ok: false, reason: value };
      values.push(value);
    }
  }
  return values.length > most ? { ok: false, reason: tooMany(values.length, most) } : { ok: true, values };
}

function textsOf(piece: ListPiece): string[] {
  if (piece.kind === 'one') return [piece.text];
  return [piece.from, piece.to, ...(piece.step === null ? [] : [piece.step])];
}

/** For each text the unit that a bare number there is in. */
function unitsOf(texts: readonly string[], dimension: Dimension, defaultUnit: string): string[] {
  const named = texts.map((part) => namedUnit(part, dimension));
  const first = named.find((unit) => unit !== null) ?? defaultUnit;
  let last = first;
  return named.map((unit) => {
    last = unit ?? last;
    return last;
  });
}

/** `null` for a bare number: it takes whatever unit it is offered. */
function namedUnit(part: string, dimension: Dimension): string | null {
  const [one, other] = dimensions[dimension].units;
  if (one === undefined || other === undefined) return null;
  const [as, orAs] = [one, other].map(({ key }) => parseQuantity(part, dimension, key));
  return as?.ok && orAs?.ok && as.unit === orAs.unit ? as.unit : null;
}

/** The reason in words where it does not read. */
function read(part: string, dimension: Dimension, unit: string): ListValue | string {
  const found = parseQuantity(part, dimension, unit);
  return found.ok ? { value: tidy(found.value), unit: found.unit } : describeProblem(found);
}

/** Typed decimals leave dust in the sixteenth digit. */
function tidy(value: number): number {
  return Number(value.toPrecision(15));
}

function spread(
  piece: Extract<ListPiece, { kind: 'range' }>,
  next: (part: string) => ListValue | string,
  dimension: Dimension,
  most: number,
): readonly (ListValue | string)[] | string {
  const [from, to, asked] = textsOf(piece).map(next);
  if (typeof from !== 'object') return from ?? '';
  if (typeof to !== 'object') return to ?? '';
  if (typeof asked === 'string') return asked;
  const said = `«${piece.from} to ${piece.to}»`;
  if (!(to.value > from.value)) return `${said} has to rise: put the smaller value first.`;
  const step = asked?.value ?? roundStep(to.value - from.value, unitOf(dimension, to.unit));
  if (!(step > 0)) return `${said} needs a step above nothing.`;
  const count = Math.floor(((to.value - from.value) / step) * (1 + 1e-9)) + 1;
  if (count > most) return tooMany(count, most);
  const values = Array.from({ length: count }, (_, i) => tidy(from.value + i * step));
  // The end is part of the range, even where the steps miss it.
  if (Math.abs((values.at(-1) ?? 0) - to.value) > 1e-6 * step) values.push(to.value);
  return values.map((value) => ({ value, unit: to.unit }));
}

/** Round in this unit, whatever its zero. */
function roundStep(span: number, { factor, divisor }: Unit): number {
  return (niceStep((span * divisor) / factor / usualSteps) * factor) / divisor;
}

function tooMany(count: number, most: number): string {
  return `That makes ${count > 1e6 ? 'millions of' : count} values, and at most ${most} fit.`;
}
