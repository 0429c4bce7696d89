import type { Design } from '../../model/design.ts';
import { fieldAt } from '../../model/fields.ts';
import { bandPolygons } from '../../studies/gaps/bands.ts';
import { contourLines, type Grid, type Point } from '../../studies/gaps/contour.ts';
import { gapPath, presentGap_m } from '../../studies/gaps/gap.ts';
import type { GapMap, GapMapQuestion, GapNode } from '../../studies/gaps/gapMap.ts';
import { stateOfReserve } from '../../studies/gaps/reserve.ts';
import { niceStep } from '../../units/niceStep.ts';
import { amount, type Dimension, plain, unitOf } from '../format.ts';
import type { UnitSystem } from '../types.ts';
import { verdictWords } from '../wording.ts';
import { roundTicks } from '../words.ts';

/** What a map is tinted by. */
export type MapShade = 'filmMargin_K' | 'loadFactor';

interface Band {
  /** 0 for the most reserve on the map, 1 for the least. */
  readonly depth: number;
  readonly polygons: readonly (readonly Point[])[];
}

interface Isoline {
  readonly label: string;
  readonly lines: readonly (readonly Point[])[];
}

/** A map over two gaps in the display units named beside it; the picture of a terrain, so that it reads in grey. */
export interface GapMapPicture {
  readonly shade: MapShade;
  readonly caption: string;
  readonly xLabel: string;
  readonly yLabel: string;
  readonly unit: string;
  readonly shadeUnit: string;
  readonly bands: readonly Band[];
  readonly isolines: readonly Isoline[];
  /** What the box does not hold at. */
  readonly failArea: readonly (readonly Point[])[];
  readonly failLines: readonly (readonly Point[])[];
  readonly littleLines: readonly (readonly Point[])[];
  readonly present: Point | null;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly xSpan: readonly [number, number];
  readonly ySpan: readonly [number, number];
  /** What the lines and the hatching mean. */
  readonly key: readonly string[];
  readonly spoken: string;
}

const captions: Readonly<Record<MapShade, string>> = {
  filmMargin_K: 'Film margin',
  loadFactor: 'Load up to',
};
const dimensionsOf: Readonly<Record<MapShade, Dimension>> = {
  filmMargin_K: 'temperatureDifference',
  loadFactor: 'number',
};

/** @returns `null` where fewer than four neighbours have an answer */
export function gapMapPicture(
  { design, x, y }: GapMapQuestion,
  map: GapMap,
  shade: MapShade,
  system: UnitSystem,
): GapMapPicture | null {
  const grid = shadeGrid(map, shade, system);
  const known = grid.values.flat().filter((value) => value !== null);
  const [low, high] = [Math.min(...known), Math.max(...known)];
  if (known.length < 4 || grid.xs.length < 2 || grid.ys.length < 2) return null;
  const label = (gap: typeof x.gap) => fieldAt(gapPath(gap)).label.toLowerCase();
  const shown = (lines: readonly (readonly Point[])[]) =>
    lines.map((line) => line.map((point) => shownPoint(point, system)));
  const shadeUnit = shade === 'loadFactor' ? '×' : unitOf(dimensionsOf[shade], system);
  return {
    shade,
    caption: captions[shade],
    xLabel: label(x.gap),
    yLabel: label(y.gap),
    unit: unitOf('length', system),
    shadeUnit,
    ...terrain(grid, low, high),
    failArea: bandPolygons(reserveGrid(map, system), Number.NEGATIVE_INFINITY, 0),
    failLines: shown(map.failLines),
    littleLines: shown(map.littleLines),
    present: presentPoint(design, x.gap, y.gap, system),
    xTicks: inside(roundTicks(grid.xs[0] ?? 0, grid.xs.at(-1) ?? 1), grid.xs),
    yTicks: inside(roundTicks(grid.ys[0] ?? 0, grid.ys.at(-1) ?? 1), grid.ys),
    xSpan: [grid.xs[0] ?? 0, grid.xs.at(-1) ?? 1],
    ySpan: [grid.ys[0] ?? 0, grid.ys.at(-1) ?? 1],
    key: keyOf(map),
    spoken: `${captions[shade]} over ${label(x.gap)} and ${label(y.gap)}: ${plain(low)} to ${plain(high)} ${shadeUnit}.`,
  };
}

function shadeGrid(map: GapMap, shade: MapShade, system: UnitSystem): Grid {
  return gridOf(map, ({ outputs }) => amount(outputs[shade], dimensionsOf[shade], system), system);
}

function reserveGrid(map: GapMap, system: UnitSystem): Grid {
  return gridOf(map, ({ reserve }) => reserve.toFail, system);
}

function gridOf(
  { xs, ys, nodes }: GapMap,
  value: (node: Extract<GapNode, { ok: true }>) => number,
  system: UnitSystem,
): Grid {
  const shown = (at_m: number) => amount(at_m, 'length', system);
  return {
    xs: xs.map(({ at_m }) => shown(at_m)),
    ys: ys.slice(0, nodes.length).map(({ at_m }) => shown(at_m)),
    values: nodes.map((line) => line.map((node) => (node.ok ? value(node) : null))),
  };
}

/** Only what is to be seen on this map. */
function keyOf({ nodes, failLines, littleLines }: GapMap): string[] {
  const all = nodes.flat();
  const states = new Set(all.flatMap((node) => (node.ok ? stateOfReserve(node.reserve) : [])));
  const [only = 'holds'] = states;
  const rest = states.has('holds') ? 'holds' : 'little';
  return [
    ...(states.size < 2 ? [`Everywhere on this map the box ${verdictWords[only]}.`] : []),
    ...(failLines.length > 0 ? ['Hatched, beyond the heavy line, the box does not hold.'] : []),
    ...(littleLines.length > 0 ? ['From the dashed line on it has little to spare.'] : []),
    ...(states.size > 1 ? [`Elsewhere it ${verdictWords[rest]}.`] : []),
    ...(all.some((node) => !node.ok) ? ['What is left blank cannot be built, or has no answer.'] : []),
  ];
}

/** Tints between round levels, and a named line on every level. */
function terrain(grid: Grid, low: number, high: number): Pick<GapMapPicture, 'bands' | 'isolines'> {
  const levels = levelsOf(low, high);
  const last = levels.length - 2;
  return {
    bands: levels.slice(0, -1).map((level, i) => ({
      depth: last > 0 ? 1 - i / last : 0,
      polygons: bandPolygons(grid, level, levels[i + 1] ?? high),
    })),
    isolines: levels.map((level) => ({
      label: plain(level, 5),
      lines: contourLines(grid, level),
    })),
  };
}

/** Ten steps or a few fewer, from below the least to above the most. */
function levelsOf(low: number, high: number): number[] {
  const step = niceStep(Math.max(high - low, 1e-6) / 10);
  const first = Math.floor(low / step + 1e-9);
  const count = Math.max(1, Math.ceil(high / step - 1e-9) - first);
  return Array.from({ length: count + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

function shownPoint({ x, y }: Point, system: UnitSystem): Point {
  return { x: amount(x, 'length', system), y: amount(y, 'length', system) };
}

function presentPoint(
  design: Design,
  x: Parameters<typeof presentGap_m>[1],
  y: typeof x,
  system: UnitSystem,
): Point | null {
  const [x_m, y_m] = [presentGap_m(design, x), presentGap_m(design, y)];
  return x_m === null || y_m === null ? null : shownPoint({ x: x_m, y: y_m }, system);
}

function inside(ticks: readonly number[], values: readonly number[]): number[] {
  const [low, high] = [values[0] ?? 0, values.at(-1) ?? 1];
  const hair = 1e-9 * (high - low);
  return ticks.filter((tick) => tick >= low - hair && tick <= high + hair);
}
