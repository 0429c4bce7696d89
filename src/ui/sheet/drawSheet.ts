import type {
  Box,
  Dimension,
  DrawingModel,
  DrawingShape,
  DrawingView,
  PartId,
  ShapeRole,
  Spot,
} from '../../report/drawing.ts';
import { type Area, meet, within } from './placeText.ts';

/** All numbers in millimetres on paper. */
export interface ArtRect {
  readonly key: string;
  readonly kind: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface ArtPath {
  readonly key: string;
  readonly kind: string;
  readonly d: string;
  readonly width: number | null;
}

export interface ArtText {
  readonly key: string;
  readonly kind: string;
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly turned: boolean;
}

export interface SheetArt {
  readonly width: number;
  readonly height: number;
  readonly scale: string;
  readonly back: readonly ArtRect[];
  readonly streams: readonly ArtPath[];
  readonly front: readonly ArtRect[];
  /** Air that misses the fins, over everything: it is thin, and it is what the eye looks for. */
  readonly slips: readonly ArtPath[];
  readonly lines: readonly ArtPath[];
  readonly texts: readonly ArtText[];
}

/** Room round a view for its dimension lines. */
const edges = {
  section: { left: 7, right: 11, top: 1, bottom: 7 },
  plan: { left: 2, right: 19, top: 8, bottom: 7 },
} as const;
type ViewName = keyof typeof edges;
/** Scales that a draughtsman would choose, as paper over life: 1 : n. */
const scales = [0.5, 0.8, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100];

const behind: readonly ShapeRole[] = ['plenum', 'neck', 'fins', 'fanOpening'];
/** The plan shows the bay alone; what stands before it is in the section. */
const sectionOnly: readonly PartId[] = ['guard', 'filter', 'fan', 'neck'];
/** Measures that the sheet has a place for, the weightiest first: where two would meet, the later one is left out. */
const shown = ['side', 'end', 'bay', 'fan', 'plenum', 'fins', 'row', 'width', 'neck'];

type Placed = (spot: Spot) => { readonly x: number; readonly y: number };

/** Both views of the drawing at one round scale, in a strip of the sheet; side by side or stacked, whichever is larger. */
export function drawSheet(model: DrawingModel, width: number, mostHeight: number): SheetArt {
  const planView = bayOnly(model.plan);
  const section = extent(model.section);
  const plan = extent(planView);
  const chosen = choose(section, plan, width, mostHeight);
  const place =
    (name: ViewName, box: Box, at: Corner): Placed =>
    (spot) => ({
      x: at.x + edges[name].left + (spot.u_m - box.u_m) * chosen.perMetre,
      y: at.y + edges[name].top + (spot.v_m - box.v_m) * chosen.perMetre,
    });
  const views: readonly View[] = [
    {
      view: model.section,
      name: 'section',
      placed: place('section', section, chosen.section),
      left: chosen.section.x + edges.section.left,
    },
    {
      view: planView,
      name: 'plan',
      placed: place('plan', plan, chosen.plan),
      left: chosen.plan.x + edges.plan.left,
    },
  ];
  const rects = (wanted: boolean) =>
    views.flatMap(({ view, name, placed }) =>
      view.shapes
        .filter((shape) => shape.corners === null && behind.includes(shape.role) === wanted)
        .map((shape, i) => rectOf(shape, placed, chosen.perMetre, `${name}-${wanted}-${i}`)),
    );
  const positions = views.flatMap(numbers);
  const measures = apart(
    views.flatMap((view) => view.view.dimensions.flatMap((each) => measureOf(each, view))),
    positions.map(boxOf),
    { x: 0, y: 0, width, height: chosen.height },
  );
  return {
    width,
    height: chosen.height,
    scale: scaleText(chosen.n),
    back: rects(true),
    streams: views.flatMap((view) => streamsOf(view, chosen.perMetre, true)),
    front: rects(false),
    slips: views.flatMap((view) => streamsOf(view, chosen.perMetre, false)),
    lines: [...views.flatMap(polygons), ...measures.map(({ line }) => line)],
    texts: [...measures.map(({ text }) => text), ...positions],
  };
}

interface View {
  readonly view: DrawingView;
  readonly name: ViewName;
  readonly placed: Placed;
  /** Left edge of what is drawn; dimension lines at the left stand outside it. */
  readonly left: number;
}

function bayOnly(view: DrawingView): DrawingView {
  const shapes = view.shapes.filter((shape) => !sectionOnly.includes(shape.part));
  const left = Math.min(...shapes.map((shape) => shape.box.u_m));
  const cut = left - view.bounds.u_m;
  return { ...view, shapes, bounds: { ...view.bounds, u_m: left, width_m: view.bounds.width_m - cut } };
}

interface Corner {
  readonly x: number;
  readonly y: number;
}

interface Arrangement {
  readonly n: number;
  readonly perMetre: number;
  readonly beside: boolean;
  readonly width: number;
  readonly height: number;
  readonly section: Corner;
  readonly plan: Corner;
}

/** The largest scale that fits; side by side is worth a slightly smaller one, for it leaves the page to the rest. */
function choose(section: Box, plan: Box, width: number, mostHeight: number): Arrangement {
  const all = scales.map((n) => arrange(section, plan, 1000 / n, n, width));
  const fitting = all.filter((arrangement) => arrangement.width <= width && arrangement.height <= mostHeight);
  const largest = fitting[0] ?? (all.at(-1) as Arrangement);
  return fitting.find((arrangement) => arrangement.beside && arrangement.n <= 1.3 * largest.n) ?? largest;
}

function arrange(section: Box, plan: Box, perMetre: number, n: number, width: number): Arrangement {
  const size = (name: ViewName, box: Box) => ({
    w: box.width_m * perMetre + edges[name].left + edges[name].right,
    h: box.height_m * perMetre + edges[name].top + edges[name].bottom,
  });
  const s = size('section', section);
  const p = size('plan', plan);
  const beside = s.w + p.w <= width;
  if (beside) {
    const height = Math.max(s.h, p.h);
    const blank = (width - s.w - p.w) / 3;
    return {
      n,
      perMetre,
      beside,
      width: s.w + p.w,
      height,
      section: { x: blank, y: height - s.h },
      plan: { x: 2 * blank + s.w, y: (height - p.h) / 2 },
    };
  }
  const x = (width - s.w) / 2;
  // The plan shares the section's u axis, so the two stand under one another as drawings do.
  const shift = (plan.u_m - section.u_m) * perMetre + edges.section.left - edges.plan.left;
  return {
    n,
    perMetre,
    beside,
    width: s.w,
    height: s.h + p.h,
    section: { x, y: 0 },
    plan: { x: x + shift, y: s.h },
  };
}

function scaleText(n: number): string {
  return n < 1 ? `${Number((1 / n).toPrecision(3))} : 1` : `1 : ${n}`;
}

/** Bounds of shapes and streams together. */
function extent({ bounds, streams }: DrawingView): Box {
  const spots = streams.flatMap((stream) => stream.points);
  const left = Math.min(bounds.u_m, ...spots.map((spot) => spot.u_m));
  const top = Math.min(bounds.v_m, ...spots.map((spot) => spot.v_m));
  return {
    u_m: left,
    v_m: top,
    width_m: bounds.u_m + bounds.width_m - left,
    height_m: bounds.v_m + bounds.height_m - top,
  };
}

function rectOf(
  { role, box, off, warmth }: DrawingShape,
  placed: Placed,
  perMetre: number,
  key: string,
): ArtRect {
  const { x, y } = placed(box);
  // A bond or a chip thinner than a hairline would not print.
  const least = role === 'bond' || role === 'chip' || role === 'collar' || role === 'tab' ? 0.22 : 0.05;
  return {
    key,
    kind: off ? `${role} off` : role === 'chip' && warmth === null ? 'chip' : role,
    x: round(x),
    y: round(y),
    width: round(Math.max(least, box.width_m * perMetre)),
    height: round(Math.max(0.05, box.height_m * perMetre)),
  };
}

function polygons({ view, name, placed }: View): ArtPath[] {
  return view.shapes.flatMap((shape, i) =>
    shape.corners === null
      ? []
      : [
          {
            key: `${name}-corner-${i}`,
            kind: shape.role,
            d: `${pathOf(shape.corners.map(placed))}Z`,
            width: null,
          },
        ],
  );
}

function streamsOf({ view, placed }: View, perMetre: number, throughFins: boolean): ArtPath[] {
  return view.streams
    .filter((stream) => (stream.kind === 'fins' || stream.kind === 'between') === throughFins)
    .flatMap((stream) => {
      const points = stream.points.map(placed);
      const width = round(stream.width_m * perMetre);
      const tip = points.at(-1);
      const arrow = tip && stream.kind === 'fins' ? [arrowHead(stream.id, tip, width)] : [];
      return [{ key: stream.id, kind: `stream to-${stream.kind}`, d: pathOf(points), width }, ...arrow];
    });
}

function arrowHead(key: string, { x, y }: Corner, width: number): ArtPath {
  const half = Math.max(0.9, width * 0.75);
  return {
    key: `${key}-tip`,
    kind: 'tip',
    d: pathOf([
      { x: x - half, y },
      { x, y: y - half * 1.1 },
      { x: x + half, y },
    ]).concat('Z'),
    width: null,
  };
}

/** Distance of a dimension line from what it measures. */
const offset = 3.2;

interface Rule {
  readonly from: Corner;
  readonly to: Corner;
  readonly upright: boolean;
  readonly length: number;
}

function ruleOf(dimension: Dimension, { placed, left }: View): Rule {
  const a = placed(dimension.from);
  const b = placed(dimension.to);
  const upright = Math.abs(a.x - b.x) < 1e-9;
  const move = ({ x, y }: Corner) => {
    if (!upright) return { x, y: y + offset };
    return { x: dimension.side === 'right' ? x + offset : left - 1.5, y };
  };
  return { from: move(a), to: move(b), upright, length: Math.hypot(a.x - b.x, a.y - b.y) };
}

const isGap = (dimension: Dimension) => dimension.id === 'side' || dimension.id === 'end';

/** A dimension as drawn: its line and its words. */
interface Measure {
  readonly id: string;
  readonly line: ArtPath;
  readonly text: ArtText;
}

function measureOf(dimension: Dimension, view: View): Measure[] {
  if (!shown.includes(dimension.id)) return [];
  const key = `${view.name}-${dimension.id}`;
  const { d, ...words } = isGap(dimension) ? leader(dimension, view) : rule(dimension, view);
  return [
    {
      id: dimension.id,
      line: { key, kind: 'dimension', d, width: null },
      text: { key, kind: 'measure', ...words },
    },
  ];
}

type Drawn = { readonly d: string } & Omit<ArtText, 'key' | 'kind'>;

/** A gap is too small for arrows of its own: a leader points at it from above the plan. */
function leader(dimension: Dimension, shownView: View): Drawn {
  const { view, placed } = shownView;
  const a = placed(dimension.from);
  const b = placed(dimension.to);
  const side = dimension.id === 'side';
  const top = placed(view.bounds).y;
  const x = side ? betweenChips(shownView) : (a.x + b.x) / 2;
  const at = { x, y: side ? (a.y + b.y) / 2 : (a.y + top) / 2 };
  const knee = { x: at.x + (side ? 0 : 1.6), y: top - 4.4 };
  return {
    d: pathOf([at, knee, { x: knee.x + (side ? -1 : 1), y: knee.y }]),
    x: round(knee.x + (side ? -1.5 : 1.5)),
    y: round(knee.y + 0.85),
    text: `${dimension.label} ${dimension.text}`,
    anchor: side ? 'end' : 'start',
    turned: false,
  };
}

/** A gap beside the row is the same all along it: pointed at where no number of a chip stands in the way. */
function betweenChips({ view, placed, left }: View): number {
  const chips = view.shapes
    .filter(({ role }) => role === 'chip')
    .map(({ box }) => placed({ u_m: box.u_m + box.width_m / 2, v_m: box.v_m }).x);
  const [before = left, after = before] = chips.slice(Math.max(0, Math.floor(chips.length / 2) - 1));
  return chips.length > 1 ? (before + after) / 2 : before - 2.6;
}

/** A dimension line beside its measure with oblique strokes at its ends; the name is left out where there is no room for it. */
function rule(dimension: Dimension, shownView: View): Drawn {
  const { from, to, upright, length } = ruleOf(dimension, shownView);
  const ends = [shownView.placed(dimension.from), shownView.placed(dimension.to)];
  const slash = (at: Corner) =>
    pathOf([
      { x: at.x - 0.6, y: at.y + 0.6 },
      { x: at.x + 0.6, y: at.y - 0.6 },
    ]);
  const past = dimension.side === 'right' || dimension.side === 'below' ? 0.8 : -0.8;
  const extension = [from, to].map((at, i) =>
    pathOf([ends[i] as Corner, upright ? { x: at.x + past, y: at.y } : { x: at.x, y: at.y + past }]),
  );
  const d = [pathOf([from, to]), ...extension, slash(from), slash(to)].join('');
  const named = `${dimension.label} ${dimension.text}`;
  const text = length < textWidth(named) ? dimension.text : named;
  const x = round((from.x + to.x) / 2);
  const y = round((from.y + to.y) / 2);
  if (!upright) return { d, x, y: round(y + 2.9), text, anchor: 'middle', turned: false };
  if (dimension.side === 'left') return { d, x: round(x - 1), y, text, anchor: 'middle', turned: true };
  if (length < textWidth(text))
    return { d, x: round(x + 1.2), y: round(y + 0.85), text, anchor: 'start', turned: false };
  return { d, x: round(x + 2.9), y, text, anchor: 'middle', turned: true };
}

/** Size of the type of measures, 7 pt, and the width of a letter of it, generously. */
const letter = { height: 2.5, width: 1.42 } as const;

function textWidth(text: string): number {
  return text.length * letter.width;
}

function boxOf({ x, y, text, anchor, turned }: ArtText): Area {
  const length = textWidth(text);
  const before = { start: 0, middle: length / 2, end: length }[anchor];
  return turned
    ? { x: x - letter.height, y: y - length + before, width: letter.height, height: length }
    : { x: x - before, y: y - letter.height, width: length, height: letter.height };
}

/** Those that stand on the paper and clear of one another, weightiest first. */
function apart(measures: readonly Measure[], taken: readonly Area[], paper: Area): Measure[] {
  const kept: Measure[] = [];
  const areas = [...taken];
  const rank = ({ id }: Measure) => shown.indexOf(id);
  for (const measure of [...measures].sort((a, b) => rank(a) - rank(b))) {
    const area = boxOf(measure.text);
    if (!within(area, paper) || areas.some((other) => meet(area, other))) continue;
    kept.push(measure);
    areas.push(area);
  }
  return kept;
}

/** Position numbers under the chips of the plan, where they stand far enough apart to be read. */
function numbers({ view, name, placed }: View): ArtText[] {
  if (name !== 'plan') return [];
  const chips = view.shapes.filter((shape) => shape.role === 'chip');
  const spots = chips.map((chip) =>
    placed({ u_m: chip.box.u_m + chip.box.width_m / 2, v_m: view.bounds.v_m }),
  );
  const pitch =
    spots.length > 1 ? ((spots.at(-1) as Corner).x - (spots[0] as Corner).x) / (spots.length - 1) : 99;
  const every = Math.max(1, Math.ceil(3.6 / pitch));
  return spots.flatMap(({ x, y }, i) =>
    i % every === 0
      ? [
          {
            key: `number-${i}`,
            kind: 'number',
            x: round(x),
            y: round(y - 0.9),
            text: `${i + 1}`,
            anchor: 'middle' as const,
            turned: false,
          },
        ]
      : [],
  );
}

function pathOf(corners: readonly Corner[]): string {
  return corners.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
}

function round(value: number): number {
  return Number(value.toFixed(3));
}
