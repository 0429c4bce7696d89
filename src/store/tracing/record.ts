import { unitSymbol } from '../../model/say.ts';
import {
  type Axis,
  type AxisId,
  axisDimension,
  type Mark,
  type Place,
  type Tracing,
} from '../../model/tracing/tracing.ts';
import type { Picture } from './tracingStore.ts';

/** A picture as found in the browser's store, whoever wrote it. @returns `null` where it is none */
export function readPicture(found: unknown): Picture | null {
  if (!isRecord(found) || !(found.blob instanceof Blob)) return null;
  const { blob, name, owner, width, height } = found;
  if (!isSize(width) || !isSize(height)) return null;
  const text = (value: unknown) => (typeof value === 'string' ? value : '');
  return { blob, name: text(name), owner: text(owner), width, height };
}

/** What was laid upon a picture, as found in the browser's store. @returns `null` where it does not read any more */
export function readKeptTracing(found: unknown): Tracing | null {
  if (!isRecord(found) || !isRecord(found.axes) || !Array.isArray(found.points)) return null;
  const flow = readAxis(found.axes.flow, 'flow');
  const pressure = readAxis(found.axes.pressure, 'pressure');
  const points = found.points.flatMap((point) => readPlace(point) ?? []);
  return flow === null || pressure === null ? null : { axes: { flow, pressure }, points };
}

function readAxis(found: unknown, id: AxisId): Axis | null {
  if (!isRecord(found) || !Array.isArray(found.marks) || typeof found.unit !== 'string') return null;
  const [first, second] = [readMark(found.marks[0]), readMark(found.marks[1])];
  if (first === null || second === null || unitSymbol(axisDimension[id], found.unit) === '') return null;
  return { log: found.log === true, unit: found.unit, marks: [first, second] };
}

function readMark(found: unknown): Mark | null {
  return isRecord(found) && typeof found.text === 'string'
    ? { at: readPlace(found.at), text: found.text }
    : null;
}

function readPlace(found: unknown): Place | null {
  if (!isRecord(found)) return null;
  const { x, y } = found;
  return typeof x === 'number' && typeof y === 'number' && Number.isFinite(x) && Number.isFinite(y)
    ? { x, y }
    : null;
}

function isSize(value: unknown): value is number {
  return typeof value === 'number' && value > 0 && Number.isFinite(value);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
