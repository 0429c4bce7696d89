import type { Dimension, DrawingModel, Measure, Spot } from '../../report/drawing.ts';
import type { DrawingWarmth } from '../../report/drawingMeasures.ts';
import { type Corner, type Frame, type Place, pathOf, round } from './geometry.ts';
import { type Stand, standInColumn, standInRow, tagSize, type Wish, widthOf } from './lanes.ts';
import { airNote, type Note, rowNotes } from './temperatures.ts';

/** Words of a measure, placed by their middle. */
export interface Tag {
  readonly measure: Measure;
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Begins at the left of its place, in a column; in the middle of it; or reads upward, along a line at the left. */
  readonly set: 'start' | 'middle' | 'upward';
}

export interface Line {
  readonly key: string;
  readonly d: string;
  readonly dashed: boolean;
}

export interface PlacedMeasures {
  readonly lines: readonly Line[];
  readonly tags: readonly Tag[];
  readonly notes: readonly Note[];
}

/** Distance of a dimension line from what it measures, and of one such line from the next. */
const offset = 9;
const tier = 8;
/** Above it stand the item numbers. */
const highest = 30;
/** On a narrow drawing a measure shorter than this has no line of its own. */
const shortest = 8;

/** One wish of a lane with the dimension or the temperature that it is for. */
interface Item extends Wish {
  readonly dimension: Dimension | null;
  readonly note: string | null;
  /** Where its line or spot is; ends of the line along the lane. */
  readonly spot: Corner;
  readonly ends: readonly [Corner, Corner];
  readonly tier: number;
}

/**
 * All measures and temperatures on the paper. Each view has lanes that nothing else uses: heights in one column at the
 * right of both views, lengths in a row below each, what is measured at the fan along the left edge. Within its lane every
 * text finds a place or is left out, so that none ever lies on another.
 * @param kept path that is being edited: it keeps its place
 */
export function placeMeasures(
  model: DrawingModel,
  warmth: DrawingWarmth | null,
  frame: Frame,
  kept: string | null,
): PlacedMeasures {
  const items = (dimensions: readonly Dimension[], place: Place): Item[] =>
    tiered(
      dimensions
        .map((dimension) => itemOf(dimension, place, kept))
        .filter(
          ({ spare, dimension, ends: [a, b] }) =>
            frame.wide ||
            !spare ||
            dimension?.drawnAs === 'leader' ||
            Math.hypot(a.x - b.x, a.y - b.y) >= shortest,
        ),
    );
  const section = items(model.section.dimensions, frame.inSection);
  const plan = items(model.plan.dimensions, frame.inPlan);
  const isUpright = ({ dimension }: Item) => dimension?.side === 'right' && dimension.drawnAs === 'line';
  const isLeft = ({ dimension }: Item) => dimension?.side === 'left';
  const isBelow = (item: Item) => !isUpright(item) && !isLeft(item);
  const column = rightColumn(
    [...section, ...plan].filter(isUpright),
    warmth === null ? [] : edgeNotes(model, warmth, frame),
    frame,
  );
  const edge = leftEdge([...section, ...plan].filter(isLeft), frame);
  const lane = (items: readonly Item[], line: number, words: number) =>
    lowerRow(items.filter(isBelow), {
      line,
      words,
      left: isBeside(edge, words) ? tagSize + 2 : 2,
      right: (isBeside(column, words) ? column.left - 4 : frame.width) - 2,
    });
  const parts = [
    column,
    edge,
    lane(section, frame.section.bottom + 42, frame.section.bottom + 56),
    lane(plan, frame.plan.bottom + 22, frame.plan.bottom + 47),
    hiddenEdges(model, frame),
  ];
  return {
    lines: parts.flatMap(({ lines }) => lines),
    tags: parts.flatMap(({ tags }) => tags),
    notes: [
      ...parts.flatMap(({ notes }) => notes),
      ...rowNotes(model, frame),
      ...airNote(model, warmth, frame),
    ],
  };
}

/** Something of what stands beside a row reaches as low as it. */
function isBeside({ tags, notes }: PlacedMeasures, row: number): boolean {
  const half = tagSize / 2 + 4;
  return (
    notes.some(({ y }) => Math.abs(y - row) < 2 * half) ||
    tags.some(({ y, width, set }) => Math.abs(y - row) < half + (set === 'upward' ? width : tagSize) / 2)
  );
}

const nothing: PlacedMeasures = { lines: [], tags: [], notes: [] };

function itemOf(dimension: Dimension, place: Place, kept: string | null): Item {
  const { side, drawnAs, clear_m } = dimension;
  // A plan is the same on both sides of its axis: what the sheet shows above is shown below, where its words stand.
  const turn = ({ u_m, v_m }: Spot): Spot => ({ u_m: clear_m ?? u_m, v_m: side === 'above' ? -v_m : v_m });
  const ends = [place(turn(dimension.from)), place(turn(dimension.to))] as const;
  const [a, b] = ends;
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  return {
    dimension,
    note: null,
    words: dimension.words,
    at: side === 'right' && drawnAs === 'line' ? middle.y : middle.x,
    spare: dimension.prominence === 'more' && (kept === null || dimension.path !== kept),
    // A slot is shown by its edge, a gap by its middle.
    spot: dimension.hidden.length > 0 ? b : middle,
    ends,
    tier: 0,
  };
}

/** Shorter lines stand nearer; those that would run over one another stand a tier farther out. */
function tiered(items: readonly Item[]): Item[] {
  const length = ({ ends: [a, b] }: Item) => Math.hypot(a.x - b.x, a.y - b.y);
  const placed: Item[] = [];
  for (const item of items.toSorted((a, b) => length(a) - length(b))) {
    let free = 0;
    while (placed.some((other) => other.tier === free && overlap(item, other))) free++;
    placed.push({ ...item, tier: free });
  }
  return items.map((item) => placed.find(({ dimension }) => dimension === item.dimension) ?? item);
}

function overlap(one: Item, other: Item): boolean {
  const { dimension: a } = one;
  const { dimension: b } = other;
  if (a?.drawnAs !== 'line' || b?.drawnAs !== 'line' || a.side !== b.side) return false;
  const along = ({ x, y }: Corner) => (a.side === 'below' ? x : y);
  const [low, high] = one.ends.map(along).toSorted((m, n) => m - n) as [number, number];
  const [from, to] = other.ends.map(along).toSorted((m, n) => m - n) as [number, number];
  return low < to - 0.5 && from < high - 0.5;
}

function rightColumn(
  measures: readonly Item[],
  more: readonly Item[],
  frame: Frame,
): PlacedMeasures & { readonly left: number } {
  const left = frame.right + (frame.wide ? 34 : 26);
  const items = [...measures, ...more];
  const stands = standInColumn(items, 44, frame.plan.bottom, frame.width - left - 1);
  const parts = items.map((item, index): PlacedMeasures => {
    const stand = stands[index];
    if (!stand) return nothing;
    const { at: y, words, width } = stand;
    const { dimension, note, spot, ends } = item;
    if (dimension === null) {
      const key = note ?? '';
      const d = key === 'outside' ? `${pathOf([spot, { x: left - 1, y }])}${dotAt(spot)}` : '';
      return {
        lines: d === '' ? [] : [{ key, d, dashed: false }],
        tags: [],
        notes: [{ key, x: left + 4, y: y + 4, text: words, anchor: 'start', strong: false }],
      };
    }
    const x = frame.right + offset + item.tier * tier;
    const [a, b] = ends.map((end) => ({ x, y: end.y })) as [Corner, Corner];
    const extensions = ends.map((end) =>
      pathOf([
        { x: end.x + 2, y: end.y },
        { x: x + 3, y: end.y },
      ]),
    );
    const leader = pathOf([
      { x, y: (a.y + b.y) / 2 },
      { x: left - 1, y },
    ]);
    return {
      lines: [
        {
          key: keyOf(dimension),
          d: [pathOf([a, b]), ...extensions, tickAt(a), tickAt(b), leader].join(''),
          dashed: false,
        },
      ],
      tags: [{ measure: dimension, words, x: left + width / 2, y, width, set: 'start' }],
      notes: [],
    };
  });
  return { ...joined(parts), left };
}

interface Lane {
  readonly line: number;
  readonly words: number;
  readonly left: number;
  readonly right: number;
}

function lowerRow(items: readonly Item[], lane: Lane): PlacedMeasures {
  const stands = standInRow(items, lane.left, lane.right);
  return joined(
    items.map((item, index): PlacedMeasures => {
      const stand = stands[index];
      const { dimension } = item;
      if (!stand || dimension === null) return nothing;
      const d = dimension.drawnAs === 'leader' ? spotRule(item, stand, lane) : lengthRule(item, stand, lane);
      const { at: x, words, width } = stand;
      return {
        lines: [{ key: keyOf(dimension), d, dashed: false }],
        tags: [{ measure: dimension, words, x, y: lane.words, width, set: 'middle' }],
        notes: [],
      };
    }),
  );
}

function lengthRule({ ends, tier: out }: Item, stand: Stand, lane: Lane): string {
  const y = lane.line + out * tier;
  const [a, b] = ends.map((end) => ({ x: end.x, y })) as [Corner, Corner];
  const extensions = ends.map((end) =>
    pathOf([
      { x: end.x, y: end.y + 2 },
      { x: end.x, y: y + 3 },
    ]),
  );
  const middle = { x: (a.x + b.x) / 2, y };
  return [
    pathOf([a, b]),
    ...extensions,
    tickAt(a),
    tickAt(b),
    pathOf([middle, topOf(stand, middle.x, lane)]),
  ].join('');
}

/** Straight down out of the view, then to the words. */
function spotRule({ spot }: Item, stand: Stand, lane: Lane): string {
  return `${pathOf([spot, { x: spot.x, y: lane.line - 4 }, topOf(stand, spot.x, lane)])}${dotAt(spot)}`;
}

/** Where a leader meets its words: straight above if it can. */
function topOf({ at, width }: Stand, x: number, { words }: Lane): Corner {
  const half = Math.max(0, width / 2 - 5);
  return { x: Math.min(at + half, Math.max(at - half, x)), y: words - 9 };
}

function leftEdge(items: readonly Item[], frame: Frame): PlacedMeasures {
  return joined(
    items.map(({ dimension, ends, words }): PlacedMeasures => {
      if (dimension === null) return nothing;
      const x = frame.left - 2;
      const [a, b] = ends.map((end) => ({ x, y: end.y })) as [Corner, Corner];
      const extensions = ends.map((end) =>
        pathOf([
          { x: end.x - 2, y: end.y },
          { x: x - 3, y: end.y },
        ]),
      );
      const [text = ''] = words;
      const width = widthOf(text);
      return {
        lines: [
          {
            key: keyOf(dimension),
            d: [pathOf([a, b]), ...extensions, tickAt(a), tickAt(b)].join(''),
            dashed: false,
          },
        ],
        tags: [
          {
            measure: dimension,
            words: text,
            x: Math.max(tagSize / 2, x - 5 - tagSize / 2),
            y: Math.max((a.y + b.y) / 2, highest + width / 2),
            width,
            set: 'upward',
          },
        ],
        notes: [],
      };
    }),
  );
}

function hiddenEdges({ plan }: DrawingModel, { inPlan }: Frame): PlacedMeasures {
  return {
    ...nothing,
    lines: plan.dimensions.flatMap(({ id, hidden }) =>
      hidden.map((edge, index) => ({
        key: `${id}-edge-${index}`,
        d: pathOf(edge.map(inPlan)),
        dashed: true,
      })),
    ),
  };
}

/** Temperatures that stand in the column at the right: what leaves above, and the sheet from outside. */
function edgeNotes({ plan }: DrawingModel, warmth: DrawingWarmth, frame: Frame): Item[] {
  const wall = plan.shapes.findLast(({ role }) => role === 'wall');
  const walls = plan.shapes.filter(({ role }) => role === 'wall');
  const lowest = Math.max(...walls.map(({ box }) => box.v_m + box.height_m));
  const end = wall === undefined ? 0 : wall.box.u_m;
  const top = { x: frame.right, y: frame.section.top + 4 };
  const corner = frame.inPlan({ u_m: end, v_m: lowest });
  const item = (note: string, words: readonly string[], spot: Corner): Item => ({
    dimension: null,
    note,
    words,
    at: spot.y,
    spare: true,
    spot,
    ends: [spot, spot],
    tier: 0,
  });
  return [
    item('exhaust', warmth.exhaust, top),
    item('outside', warmth.outside, { x: corner.x, y: corner.y - 2 }),
  ];
}

function joined(parts: readonly PlacedMeasures[]): PlacedMeasures {
  return {
    lines: parts.flatMap(({ lines }) => lines),
    tags: parts.flatMap(({ tags }) => tags),
    notes: parts.flatMap(({ notes }) => notes),
  };
}

/** Two measures may be called alike in the two views. */
function keyOf({ id, path }: Dimension): string {
  return path ?? id;
}

function tickAt({ x, y }: Corner): string {
  return pathOf([
    { x: x - 2.5, y: y + 2.5 },
    { x: x + 2.5, y: y - 2.5 },
  ]);
}

function dotAt({ x, y }: Corner): string {
  return `M${round(x - 1.5)} ${round(y)}a1.5 1.5 0 1 0 3 0a1.5 1.5 0 1 0 -3 0`;
}
