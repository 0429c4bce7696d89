/** Plots drawn by hand in millimetres on paper: no chart library, so that they print anywhere. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Paper of a plot with both axes, and the places of values on it. */
export interface PlotFrame {
  readonly width: number;
  readonly height: number;
  readonly frame: Frame;
  readonly xTicks: readonly Tick[];
  readonly yTicks: readonly Tick[];
  readonly xName: string;
  readonly yName: string;
}

const margin = { left: 8, right: 2, top: 4, bottom: 7.5 } as const;

export function framed(
  { width, height }: { readonly width: number; readonly height: number },
  x: { readonly ticks: readonly number[]; readonly name: string },
  y: { readonly ticks: readonly number[]; readonly name: string },
) {
  const frame: Frame = {
    x: margin.left,
    y: margin.top,
    width: width - margin.left - margin.right,
    height: height - margin.top - margin.bottom,
  };
  const at = (value: number, ticks: readonly number[]) => {
    const low = ticks[0] ?? 0;
    return (value - low) / ((ticks.at(-1) ?? low + 1) - low);
  };
  const placeX = (value: number) => round(frame.x + at(value, x.ticks) * frame.width);
  const placeY = (value: number) => round(frame.y + (1 - at(value, y.ticks)) * frame.height);
  const plot: PlotFrame = {
    width,
    height,
    frame,
    xTicks: x.ticks.map((value) => ({ at: placeX(value), text: tickText(value) })),
    yTicks: y.ticks.map((value) => ({ at: placeY(value), text: tickText(value) })),
    xName: x.name,
    yName: y.name,
  };
  return { plot, placeX, placeY };
}

const dot = 1;

/** What the dot of a mark covers. */
export function dotArea({ x, y }: Point): Frame {
  return { x: x - dot, y: y - dot, width: 2 * dot, height: 2 * dot };
}

export function polyline(points: readonly Point[]): string {
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}

export function tickText(value: number): string {
  return `${Number(value.toPrecision(6))}`.replace('-', '−');
}

export function round(value: number): number {
  return Number(value.toFixed(3));
}
