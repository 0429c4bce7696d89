import type { DrawingShape, DrawingShapes, PartId, ShapeRole } from '../../report/drawing.ts';

export interface Layer {
  readonly key: string;
  readonly part: PartId;
  readonly role: ShapeRole;
  readonly warmth: number | null;
  readonly temperature: string | null;
  readonly x: number;
  readonly width: number;
}

export interface Detail {
  /** Number of the resistor, from 1. */
  readonly resistor: number;
  readonly layers: readonly Layer[];
  /** How many times larger than life, for a pixel of 1/96 inch. */
  readonly enlarged: number;
  /** "plate 64 °C, film 95 °C, plate 66 °C", empty where nothing is computed. */
  readonly words: string;
}

const stack: readonly ShapeRole[] = ['bond', 'chip', 'tab'];
/** Of each plate so much is shown as this share of what lies between them. */
const plateShown = 0.4;
const perMetreOfLife = 96 / 0.0254;

/** The hottest resistor between its plates, cut along the row, so large that bond and chip can be seen. */
export function detailOf({ plan }: DrawingShapes, width: number): Detail | null {
  const chips = plan.shapes.filter(({ role }) => role === 'chip');
  const hottest = Math.max(...chips.map(({ warmth }) => warmth ?? -1));
  const chip = chips.find(({ warmth }) => (warmth ?? -1) === hottest);
  if (chip === undefined || chip.index === null) return null;
  const own = plan.shapes.filter(({ role, index }) => index === chip.index && stack.includes(role));
  const start = Math.min(...own.map(startOf));
  const end = Math.max(...own.map(endOf));
  const isAt = (u: number, edge: number) => Math.abs(u - edge) < 1e-6;
  const plates = plan.shapes.filter(({ role }) => role === 'plate');
  const before = plates.find((plate) => isAt(endOf(plate), start));
  const after = plates.find((plate) => isAt(startOf(plate), end));
  const margin = plateShown * (end - start);
  const perMetre = width / (end - start + 2 * margin);
  const layer = (shape: DrawingShape, from: number, to: number): Layer => ({
    key: `${shape.role}-${from.toFixed(7)}`,
    part: shape.part,
    role: shape.role,
    warmth: shape.warmth,
    temperature: shape.temperature,
    x: (from - start + margin) * perMetre,
    width: (to - from) * perMetre,
  });
  const layers = [
    ...(before === undefined ? [] : [layer(before, start - margin, start)]),
    ...own.map((shape) => layer(shape, startOf(shape), endOf(shape))).toSorted((a, b) => a.x - b.x),
    ...(after === undefined ? [] : [layer(after, end, end + margin)]),
  ];
  return {
    resistor: chip.index + 1,
    layers,
    enlarged: Math.round(perMetre / perMetreOfLife),
    words: layers
      .filter(({ temperature }) => temperature !== null)
      .map(({ role, temperature }) => `${role === 'chip' ? 'film' : role} ${temperature}`)
      .join(', '),
  };
}

function startOf({ box }: DrawingShape): number {
  return box.u_m;
}

function endOf({ box }: DrawingShape): number {
  return box.u_m + box.width_m;
}
