import type {
  Box,
  DrawingShape,
  DrawingShapes,
  PartId,
  ShapeRole,
  Spot,
  Stream,
  ViewShapes,
} from '../../report/drawing.ts';
import { partNumber } from './partNumbers.ts';
import { spread } from './spread.ts';

export interface Corner {
  readonly x: number;
  readonly y: number;
}

export interface PlacedShape {
  readonly key: string;
  readonly part: PartId;
  readonly role: ShapeRole;
  readonly off: boolean;
  readonly warmth: number | null;
  /** Rectangles and corners alike. */
  readonly d: string;
  /** Spoken and shown by the mouse: "resistor 5, 104 °C". */
  readonly hint: string | null;
}

export interface PlacedStream {
  readonly key: string;
  readonly kind: Stream['kind'];
  /** Where it is one with the others, and where it goes its own way. */
  readonly trunk: string;
  readonly branch: string;
  readonly width: number;
  readonly tip: string | null;
}

export interface Balloon extends Corner {
  readonly part: PartId;
  readonly number: number;
  readonly name: string;
  readonly leader: string;
  readonly tip: Corner;
}

export interface PlacedView {
  readonly name: 'section' | 'plan';
  readonly shapes: readonly PlacedShape[];
  readonly streams: readonly PlacedStream[];
}

export type Place = (spot: Spot) => Corner;

/** Where everything stands on the paper, in pixels; dimensions and temperatures have bands of their own. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Room for words beside the lines; without it, values alone. */
  readonly wide: boolean;
  readonly perMetre: number;
  readonly left: number;
  /** Right edge of what is drawn; beyond it dimension lines, then their words. */
  readonly right: number;
  readonly section: Band;
  readonly plan: Band;
  readonly inSection: Place;
  readonly inPlan: Place;
}

interface Band {
  readonly top: number;
  readonly bottom: number;
}

export interface PlacedDrawing extends Frame {
  readonly views: readonly PlacedView[];
  readonly balloons: readonly Balloon[];
}

/** Never smaller than a finger or a mouse needs. */
export const balloonSize = 24;
/** Pixels of room round and between the views. */
const room = {
  left: 26,
  wideRight: 160,
  right: 82,
  balloons: 42,
  below: 32,
  film: 20,
  planBelow: 60,
} as const;
const balloonsBelow = 38;
const tallest = 560;
const wideFrom = 480;

/** Drawn first, so that nothing they carry is hidden. */
const background: readonly ShapeRole[] = ['plenum', 'neck', 'fins', 'fanOpening'];
const numberedBelow: readonly PartId[] = ['plenum', 'baffle', 'box'];

/** Both views to one scale in so many pixels of width, the plan straight under the section, with room for all words. */
export function placeDrawing(model: DrawingShapes, width: number): PlacedDrawing {
  const section = extentOf(model.section);
  const plan = extentOf(model.plan);
  const wide = width >= wideFrom;
  const left_m = Math.min(section.u_m, plan.u_m);
  const right_m = Math.max(section.u_m + section.width_m, plan.u_m + plan.width_m);
  const fixed = room.balloons + balloonsBelow + room.below + room.film + room.planBelow;
  const free = width - room.left - (wide ? room.wideRight : room.right);
  const perMetre = Math.min(
    free / (right_m - left_m),
    (tallest - fixed) / (section.height_m + plan.height_m),
  );
  const x0 = room.left + (free - (right_m - left_m) * perMetre) / 2;
  const placeAt =
    (top: number, box: Box): Place =>
    (spot) => ({ x: x0 + (spot.u_m - left_m) * perMetre, y: top + (spot.v_m - box.v_m) * perMetre });

  const sectionTop = room.balloons;
  const sectionBottom = sectionTop + section.height_m * perMetre;
  const planTop = sectionBottom + balloonsBelow + room.below + room.film;
  const planBottom = planTop + plan.height_m * perMetre;
  const inSection = placeAt(sectionTop, section);
  const inPlan = placeAt(planTop, plan);
  return {
    width,
    height: planBottom + room.planBelow,
    wide,
    perMetre,
    left: x0,
    right: x0 + (right_m - left_m) * perMetre,
    section: { top: sectionTop, bottom: sectionBottom },
    plan: { top: planTop, bottom: planBottom },
    inSection,
    inPlan,
    views: [
      placeView('section', model.section, inSection, perMetre),
      placeView('plan', model.plan, inPlan, perMetre),
    ],
    balloons: placeBalloons(model, inSection, {
      top: balloonSize / 2 + 2,
      bottom: sectionBottom + balloonsBelow - balloonSize / 2 - 2,
      left: balloonSize / 2 + 2,
      right: width - balloonSize / 2 - 2,
    }),
  };
}

function extentOf({ bounds, streams }: ViewShapes): Box {
  const spots = streams.flatMap(({ points }) => points);
  const left = Math.min(bounds.u_m, ...spots.map(({ u_m }) => u_m));
  const top = Math.min(bounds.v_m, ...spots.map(({ v_m }) => v_m));
  return {
    u_m: left,
    v_m: top,
    width_m: bounds.u_m + bounds.width_m - left,
    height_m: bounds.v_m + bounds.height_m - top,
  };
}

function placeView(name: PlacedView['name'], view: ViewShapes, place: Place, perMetre: number): PlacedView {
  const shapes = view.shapes.map((shape, index) => placeShape(shape, place, perMetre, `${name}-${index}`));
  const isBack = ({ role }: PlacedShape) => background.includes(role);
  return {
    name,
    shapes: [...shapes.filter(isBack), ...shapes.filter((shape) => !isBack(shape))],
    streams: view.streams.map((stream) => placeStream(stream, place, perMetre)),
  };
}

/** Bonds, tabs and chips are thinner than a line can be; they are drawn as thin as can be seen. */
const leastWidth: Partial<Record<ShapeRole, number>> = {
  bond: 1,
  tab: 1.2,
  chip: 1.8,
  collar: 1.5,
  guard: 1.5,
};

function placeShape(shape: DrawingShape, place: Place, perMetre: number, key: string): PlacedShape {
  const { part, role, box, corners, off, warmth, temperature, index } = shape;
  const least = leastWidth[role] ?? 0.5;
  const at = place(box);
  const width = Math.max(least, box.width_m * perMetre);
  const height = Math.max(0.5, box.height_m * perMetre);
  const x = at.x - (width - box.width_m * perMetre) / 2;
  return {
    key,
    part,
    role,
    off,
    warmth,
    d:
      corners === null
        ? `M${round(x)} ${round(at.y)}h${round(width)}v${round(height)}h${round(-width)}z`
        : `${pathOf(corners.map(place))}z`,
    hint: temperature === null ? null : `${role} ${(index ?? 0) + 1}: ${temperature}`,
  };
}

function placeStream({ id, kind, points, width_m }: Stream, place: Place, perMetre: number): PlacedStream {
  const corners = points.map(place);
  const width = round(Math.max(1, width_m * perMetre));
  const pairs = corners.slice(1).map((to, i) => [corners[i] as Corner, to] as const);
  const isLevel = ([from, to]: readonly [Corner, Corner]) => Math.abs(from.y - to.y) < 0.01;
  const end = corners.at(-1);
  return {
    key: id,
    kind,
    // The trunk reaches past the middle of its branch, so that the corner is filled.
    trunk: pairs
      .filter(isLevel)
      .map(([from, to]) => pathOf([from, { x: to.x + (Math.sign(to.x - from.x) * width) / 2, y: to.y }]))
      .join(''),
    branch: pairs
      .filter((pair) => !isLevel(pair))
      .map(pathOf)
      .join(''),
    width,
    tip: end === undefined ? null : arrowHead(end, Math.min(9, Math.max(2.5, width * 0.7))),
  };
}

function arrowHead({ x, y }: Corner, half: number): string {
  return `${pathOf([
    { x: x - half, y },
    { x, y: y - half * 1.2 },
    { x: x + half, y },
  ])}z`;
}

interface Rows extends Band {
  readonly left: number;
  readonly right: number;
}

function placeBalloons(model: DrawingShapes, place: Place, band: Rows): Balloon[] {
  const items = model.parts.flatMap(({ part, name }) => {
    const number = partNumber(part);
    const tip = tipOf(part, model.section);
    return number === null || tip === null ? [] : [{ part, number, name, tip: place(tip) }];
  });
  const row = (below: boolean) => {
    const own = items
      .filter(({ part }) => numberedBelow.includes(part) === below)
      .sort((a, b) => a.tip.x - b.tip.x);
    const places = spread(
      own.map(({ tip }) => tip.x),
      Math.min(balloonSize + 4, (band.right - band.left) / Math.max(1, own.length - 1)),
      band.left,
      band.right,
    );
    const y = below ? band.bottom : band.top;
    return own.map((item, index): Balloon => {
      const x = places[index] ?? item.tip.x;
      const from = { x, y: y + (below ? -1 : 1) * (balloonSize / 2) };
      return { ...item, x: round(x), y, leader: pathOf([from, item.tip]) };
    });
  };
  return [...row(false), ...row(true)].sort((a, b) => a.number - b.number);
}

/** Where the leader of a part ends, in the section: on the part, where nothing else lies. */
function tipOf(part: PartId, view: ViewShapes): Spot | null {
  const { bounds, shapes } = view;
  if (part === 'room') {
    const axis = boundsMiddle(shapes.find(({ role }) => role === 'fanHub'));
    return { u_m: extentOf(view).u_m + 0.006 * bounds.width_m, v_m: axis };
  }
  const { at = part, role, pick = 0, u = 0.5, v = 0.5 } = tips[part] ?? {};
  const fitting = shapes.filter((shape) => shape.part === at && shape.role === (role ?? shape.role));
  const chosen = fitting[Math.min(fitting.length - 1, Math.floor(pick * fitting.length))];
  if (chosen === undefined) return null;
  const { box } = chosen;
  const slot = shapes.find((shape) => shape.role === 'slot');
  // Between the wall and the slot, where the sheet of the baffle is seen.
  if (part === 'baffle' && slot)
    return { u_m: (box.u_m + slot.box.u_m) / 2, v_m: box.v_m + box.height_m / 2 };
  return { u_m: box.u_m + u * box.width_m, v_m: box.v_m + v * box.height_m };
}

function boundsMiddle(shape: DrawingShape | undefined): number {
  return shape === undefined ? 0 : shape.box.v_m + shape.box.height_m / 2;
}

interface Tip {
  /** Part whose shape it is, where not its own. */
  readonly at?: PartId;
  readonly role?: ShapeRole;
  /** Which of several shapes, as a share of the row, and where on it. */
  readonly pick?: number;
  readonly u?: number;
  readonly v?: number;
}

const tips: Partial<Record<PartId, Tip>> = {
  load: { at: 'resistors', v: 0.1 },
  guard: { v: 0.06 },
  filter: { v: 0.12 },
  fan: { role: 'fanFrame', u: 0.6, v: 0.06 },
  neck: { u: 0.6, v: 0.3 },
  plenum: { u: 0.3, v: 0.85 },
  baffle: { role: 'baffle' },
  sinks: { role: 'fins', pick: 0.3, u: 0.25, v: 0.3 },
  resistors: { pick: 0.45, v: 0.1 },
  bonds: { pick: 0.6, v: 0.15 },
  secondFace: { pick: 0.8, v: 0.15 },
  box: { pick: 0.3, v: 0.75 },
  outlet: { u: 0.97 },
};

export function pathOf(corners: readonly Corner[]): string {
  return corners.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
}

export function round(value: number): number {
  return Number(value.toFixed(2));
}
