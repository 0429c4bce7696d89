import { fieldAt } from '../fields.ts';
import { parseIn, sayQuantity, type UnitSystem, unitFor } from '../say.ts';

/** A place in a picture, in its own pixels from the upper left corner, x to the right and y down; not always whole. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

export const axisIds = ['flow', 'pressure'] as const;

export type AxisId = (typeof axisIds)[number];

/** What is measured along an axis. */
export const axisDimension = { flow: 'volumeFlow', pressure: 'pressure' } as const;

/** One of the two places of an axis whose value is printed on the sheet. */
export interface Mark {
  /** `null` until it is put into the picture. */
  readonly at: Place | null;
  /** Its value as typed: "50", "0.12 inH2O". */
  readonly text: string;
}

export interface Axis {
  /** Equal ways along it are equal ratios. */
  readonly log: boolean;
  /** Key of the unit of a bare number; the one typed last. */
  readonly unit: string;
  readonly marks: readonly [Mark, Mark];
}

/** All that is laid upon a picture to make a curve of it, just as it was put and typed. */
export interface Tracing {
  readonly axes: Readonly<Record<AxisId, Axis>>;
  /** Along the curve, in the order of the reader. */
  readonly points: readonly Place[];
}

/** Nothing laid upon the picture yet; bare numbers in the units of the reader. */
export function emptyTracing(system: UnitSystem, units: Partial<Record<AxisId, string>> = {}): Tracing {
  const axis = (id: AxisId): Axis => ({
    log: false,
    unit: units[id] ?? unitFor(axisDimension[id], system),
    marks: [
      { at: null, text: '' },
      { at: null, text: '' },
    ],
  });
  return { axes: { flow: axis('flow'), pressure: axis('pressure') }, points: [] };
}

export type MarkRead =
  | { readonly ok: true; readonly value: number; readonly unit: string }
  | { readonly ok: false; readonly reason: string };

/** The value of a mark, SI, or one sentence on what is wrong with its text. */
export function readMark(axis: Axis, id: AxisId, index: 0 | 1, system: UnitSystem): MarkRead {
  const read = parseIn(axis.marks[index].text, axisDimension[id], axis.unit, system);
  if (!read.ok) return read;
  if (axis.log && read.value <= 0)
    return { ok: false, reason: 'A logarithmic axis has no zero: this must be more than nothing.' };
  const most = largestOn(id);
  if (Math.abs(read.value) > most)
    return {
      ok: false,
      reason: `Out of bounds. An axis goes to ${sayQuantity(most, axisDimension[id], system, read.unit)} at most.`,
    };
  return read;
}

/** An axis may be printed below zero, but not beyond what a curve may hold. */
function largestOn(id: AxisId): number {
  const field = fieldAt(id === 'flow' ? 'fan.curve[0].flow_m3PerS' : 'fan.curve[0].dp_Pa');
  return field.kind === 'quantity' ? field.hard[1] : 0;
}
