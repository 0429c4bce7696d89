import type {
  Box,
  Dimension,
  DrawingModel,
  DrawingShape,
  DrawingView,
  PartId,
  ShapeRole,
  Spot,
  Stream,
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

export interface PlacedText {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turned: boolean;
  readonly strong: boolean;
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
  readonly lines: readonly { readonly key: string; readonly d: string }[];
  readonly texts: readonly PlacedText[];
}

export interface PlacedDrawing {
  readonly width: number;
  readonly height: number;
  readonly views: readonly PlacedView[];
  readonly balloons: readonly Balloon[];
}

/** Pixels of room round and between the views. */
const room = { left: 26, right: 58, balloons: 44, below: 26, film: 34, planBelow: 40 } as const;
/** Never smaller than a finger or a mouse needs. */
export const balloonSize = 24;
const tallest = 560;

const shownDimensions = new Set(['fan', 'neck', 'plenum', 'fins', 'bay', 'row', 'width', 'side', 'end']);
/** Drawn first, so that nothing they carry is hidden. */
const background: readonly ShapeRole[] = ['plenum', 'neck', 'fins', 'fanOpening'];
const numberedBelow: readonly PartId[] = ['neck', 'plenum', 'baffle', 'box'];

type Place = (spot: Spot) => Corner;

/** Both views to one scale in so many pixels of width, the plan straight under the section, with room for all words. */
export function placeDrawing(model: DrawingModel, width: number): PlacedDrawing {
  const section = extentOf(model.section);
  const plan = extentOf(model.plan);
  const left_m = Math.min(section.u_m, plan.u_m);
  const right_m = Math.max(section.u_m + section.width_m, plan.u_m + plan.width_m);
  const fixed = 2 * room.balloons + room.below + room.film + room.planBelow;
  const across = (width - room.left - room.right) / (right_m - left_m);
  const perMetre = Math.min(across, (tallest - fixed) / (section.height_m + plan.height_m));
  const x0 = room.left + (width - room.left - room.right - (right_m - left_m) * perMetre) / 2;
  const placeAt =
    (top: number, box: Box): Place =>
    (spot) => ({ x: x0 + (spot.u_m - left_m) * perMetre, y: top + (spot.v_m - box.v_m) * perMetre });

  const sectionTop = room.balloons;
  const sectionBottom = sectionTop + section.height_m * perMetre;
  const planTop = sectionBottom + room.below + room.balloons + room.film;
  const height = planTop + plan.height_m * perMetre + room.planBelow;
  const inSection = placeAt(sectionTop, section);
  const inPlan = placeAt(planTop, plan);
  return {
    width,
    height,
    views: [
      placeView('section', model.section, inSection, perMetre, []),
      placeView('plan', model.plan, inPlan, perMetre, filmTexts(model.plan, inPlan, planTop - 22)),
    ],
    balloons: placeBalloons(model, inSection, {
      top: balloonSize / 2 + 2,
      bottom: sectionBottom + room.below + room.balloons - balloonSize / 2 - 8,
      left: balloonSize / 2 + 2,
      right: width - balloonSize / 2 - 2,
    }),
  };
}

function extentOf({ bounds, streams }: DrawingView): Box {
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

function placeView(
  name: PlacedView['name'],
  view: DrawingView,
  place: Place,
  perMetre: number,
  more: readonly PlacedText[],
): PlacedView {
  const shapes = view.shapes.map((shape, index) => placeShape(shape, place, perMetre, `${name}-${index}`));
  const isBack = ({ role }: PlacedShape) => background.includes(role);
  const dimensions = view.dimensions.filter(({ id }) => shownDimensions.has(id));
  const rules = dimensions.map((dimension) => placeDimension(dimension, view, place));
  return {
    name,
    shapes: [...shapes.filter(isBack), ...shapes.filter((shape) => !isBack(shape))],
    streams: view.streams.map((stream) => placeStream(stream, place, perMetre)),
    lines: rules.map(({ key, d }) => ({ key, d })),
    texts: [...rules.map(({ text }) => text), ...more],
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

/** Distance of a dimension line from what it measures. */
const offset = 12;
const letter = 5.6;

interface Rule {
  readonly key: string;
  readonly d: string;
  readonly text: PlacedText;
}

function placeDimension(dimension: Dimension, view: DrawingView, place: Place): Rule {
  if (dimension.id === 'side' || dimension.id === 'end') return placeGap(dimension, view, place);
  const ends = [place(dimension.from), place(dimension.to)] as const;
  const upright = Math.abs(ends[0].x - ends[1].x) < 0.01;
  const left = dimension.side === 'left';
  const edge = left ? place(extentOf(view)).x - 4 : place({ ...dimension.from }).x + offset;
  const [from, to] = ends.map(({ x, y }) => (upright ? { x: edge, y } : { x, y: y + offset })) as [
    Corner,
    Corner,
  ];
  const beyond = left ? -3 : 3;
  const extensions = [from, to].map(({ x, y }, i) =>
    pathOf([ends[i] as Corner, upright ? { x: x + beyond, y } : { x, y: y + beyond }]),
  );
  const d = [pathOf([from, to]), ...extensions, tickAt(from), tickAt(to)].join('');
  const text = `${dimension.label} ${dimension.text}`;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const words = length < text.length * letter + 10 ? dimension.text : text;
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const key = dimension.id;
  if (!upright) return { key, d, text: textAt(key, middle.x, middle.y + 12, words, 'middle') };
  if (left || length >= words.length * letter + 10) {
    return { key, d, text: textAt(key, middle.x + (left ? -4 : 11), middle.y, words, 'middle', true) };
  }
  return { key, d, text: textAt(key, middle.x + 6, middle.y + 4, words, 'start') };
}

/** A gap has no room for a line between its ends: a leader points at it from outside the plan. */
function placeGap({ id, label, text, from, to }: Dimension, view: DrawingView, place: Place): Rule {
  const a = place(from);
  const b = place(to);
  const bounds = place(view.bounds);
  const right = place({ u_m: view.bounds.u_m + view.bounds.width_m, v_m: 0 }).x;
  const bottom = place({ u_m: 0, v_m: view.bounds.v_m + view.bounds.height_m }).y;
  const isSide = id === 'side';
  const at = isSide
    ? { x: right - 0.35 * (right - a.x), y: (a.y + b.y) / 2 }
    : { x: (a.x + b.x) / 2, y: bounds.y + 0.75 * (bottom - bounds.y) };
  const knee = { x: right + 6, y: isSide ? bounds.y - 2 : bottom + 22 };
  return {
    key: id,
    d: `${pathOf([at, knee])}${dotAt(at)}`,
    text: textAt(id, knee.x + (isSide ? 46 : 46), knee.y + (isSide ? -3 : 10), `${label} ${text}`, 'end'),
  };
}

function textAt(
  key: string,
  x: number,
  y: number,
  text: string,
  anchor: PlacedText['anchor'],
  turned = false,
  strong = false,
): PlacedText {
  return { key, x: round(x), y: round(y), text, anchor, turned, strong };
}

/** Film temperatures over the row, each above its resistor; every other one, or fewer, where they stand too close. */
function filmTexts(view: DrawingView, place: Place, y: number): PlacedText[] {
  const chips = view.shapes.filter(({ role }) => role === 'chip');
  const hottest = Math.max(...chips.map(({ warmth }) => warmth ?? -1));
  const placed = chips.map((chip) => ({
    chip,
    x: place({ u_m: chip.box.u_m + chip.box.width_m / 2, v_m: 0 }).x,
  }));
  const first = placed[0];
  const last = placed.at(-1);
  if (first === undefined || last === undefined || first.chip.temperature === null) return [];
  const pitch = placed.length > 1 ? (last.x - first.x) / (placed.length - 1) : 99;
  const every = Math.ceil(24 / pitch);
  const peak = placed.findIndex(({ chip }) => chip.warmth === hottest);
  const numbers = placed.flatMap(({ chip, x }, index) => {
    if ((index - peak) % every !== 0) return [];
    const [number = ''] = (chip.temperature ?? '').split('\u202f');
    return [textAt(`film-${index}`, x, y, number, 'middle', false, index === peak)];
  });
  const unit = first.chip.temperature.split('\u202f')[1] ?? '';
  return [textAt('film', (numbers[0]?.x ?? first.x) - 18, y, `film, ${unit}`, 'end'), ...numbers];
}

interface Band {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

function placeBalloons(model: DrawingModel, place: Place, band: Band): Balloon[] {
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
      balloonSize + 4,
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
function tipOf(part: PartId, { shapes }: DrawingView): Spot | null {
  const own = shapes.filter((shape) => shape.part === part);
  const role: Partial<Record<PartId, ShapeRole>> = { fan: 'fanFrame', baffle: 'baffle', sinks: 'fins' };
  const fitting = own.filter((shape) => shape.role === (role[part] ?? shape.role));
  const { pick, u, v } = tips[part] ?? { pick: 0.5, u: 0.5, v: 0.5 };
  const chosen = fitting[Math.min(fitting.length - 1, Math.floor(pick * fitting.length))];
  if (chosen === undefined) return null;
  return { u_m: chosen.box.u_m + u * chosen.box.width_m, v_m: chosen.box.v_m + v * chosen.box.height_m };
}

/** Which of several shapes a leader takes, as a share of the row, and where on it. */
const tips: Partial<Record<PartId, { readonly pick: number; readonly u: number; readonly v: number }>> = {
  guard: { pick: 0, u: 0.5, v: 0.06 },
  filter: { pick: 0, u: 0.5, v: 0.12 },
  fan: { pick: 0, u: 0.6, v: 0.06 },
  neck: { pick: 0, u: 0.5, v: 0.72 },
  plenum: { pick: 0, u: 0.3, v: 0.85 },
  baffle: { pick: 0, u: 0.985, v: 0.5 },
  sinks: { pick: 0.2, u: 0.25, v: 0.3 },
  resistors: { pick: 0.4, u: 0.5, v: 0.1 },
  bonds: { pick: 0.55, u: 0.5, v: 0.15 },
  secondFace: { pick: 0.8, u: 0.5, v: 0.15 },
  box: { pick: 0.3, u: 0.5, v: 0.75 },
  outlet: { pick: 0, u: 0.97, v: 0.5 },
};

function tickAt({ x, y }: Corner): string {
  return pathOf([
    { x: x - 2.5, y: y + 2.5 },
    { x: x + 2.5, y: y - 2.5 },
  ]);
}

function dotAt({ x, y }: Corner): string {
  return `M${round(x - 1.5)} ${round(y)}a1.5 1.5 0 1 0 3 0a1.5 1.5 0 1 0 -3 0`;
}

function pathOf(corners: readonly Corner[]): string {
  return corners.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
}

function round(value: number): number {
  return Number(value.toFixed(2));
}
