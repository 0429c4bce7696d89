import type { DrawingModel, DrawingShape } from '../../report/drawing.ts';
import type { DrawingWarmth } from '../../report/drawingMeasures.ts';
import { sinkFigure } from '../../report/working/figureIds.ts';
import { filmFigure } from '../../report/working/headlineIds.ts';
import type { FigureId } from '../../report/working/types.ts';
import { type Frame, type Place, round } from './geometry.ts';
import { tagSize, widthOf } from './lanes.ts';

/** A temperature on the drawing. For the mouse alone it opens its working: the tables have the same numbers for all. */
export interface Note {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly strong: boolean;
  readonly figure?: FigureId;
}

/** Films above the row, plates of the sinks below it, each over its own. */
export function rowNotes({ plan }: DrawingModel, { inPlan, plan: band }: Frame): Note[] {
  const chips = plan.shapes.filter(({ role }) => role === 'chip');
  const plates = plan.shapes.filter(({ role }) => role === 'plate');
  const sinks = [...new Set(plates.map(({ index }) => index))].map((sink) => {
    const own = plates.filter(({ index }) => index === sink);
    const hottest = own.reduce((a, b) => ((a.warmth ?? 0) >= (b.warmth ?? 0) ? a : b));
    const fins = plan.shapes.find(({ role, index }) => role === 'fins' && index === sink);
    return { ...hottest, box: (fins ?? hottest).box };
  });
  return [
    ...temperatures('film', chips, inPlan, band.top - 7, filmFigure),
    ...temperatures('sink', sinks, inPlan, band.bottom + 13, (index) => sinkFigure('plate', index)),
  ];
}

/** Every other one, or fewer, where they stand too close; the hottest always. */
function temperatures(
  name: string,
  shapes: readonly DrawingShape[],
  place: Place,
  y: number,
  figureOf: (index: number) => FigureId,
): Note[] {
  const hottest = Math.max(...shapes.map(({ warmth }) => warmth ?? -1));
  const placed = shapes.map((shape) => ({
    shape,
    x: round(place({ u_m: shape.box.u_m + shape.box.width_m / 2, v_m: 0 }).x),
  }));
  const first = placed[0];
  const last = placed.at(-1);
  if (first === undefined || last === undefined || first.shape.temperature === null) return [];
  const pitch = placed.length > 1 ? (last.x - first.x) / (placed.length - 1) : 99;
  const every = Math.ceil(26 / pitch);
  const peak = placed.findIndex(({ shape }) => shape.warmth === hottest);
  const numbers = placed.flatMap(({ shape, x }, index): Note[] => {
    if ((index - peak) % every !== 0) return [];
    const [text = ''] = (shape.temperature ?? '').split('\u202f');
    const figure = figureOf(shape.index ?? index);
    return [{ key: `${name}-${index}`, x, y, text, anchor: 'middle', strong: index === peak, figure }];
  });
  const unit = first.shape.temperature.split('\u202f')[1] ?? '';
  const x = (numbers[0]?.x ?? first.x) - 18;
  const text = [`${name}, ${unit}`, unit].find((each) => x - widthOf(each) >= tagSize);
  return text === undefined ? numbers : [{ key: name, x, y, text, anchor: 'end', strong: false }, ...numbers];
}

/** On the stream itself, in the neck-down, where it is wide and long enough. */
export function airNote(
  { section, trunk_m }: DrawingModel,
  warmth: DrawingWarmth | null,
  { inSection, perMetre }: Frame,
): Note[] {
  const neck = section.shapes.find(({ role }) => role === 'neck');
  if (neck === undefined || warmth === null || trunk_m * perMetre < 14) return [];
  const { u_m, v_m, width_m, height_m } = neck.box;
  const text = warmth.airIn.find((each) => widthOf(each) <= width_m * perMetre);
  if (text === undefined) return [];
  const { x, y } = inSection({ u_m: u_m + width_m / 2, v_m: v_m + height_m / 2 });
  return [{ key: 'air', x, y: y + 4, text, anchor: 'middle', strong: false }];
}
