import type { Mark, Measure, Point, Remark, Shape, Span, Spot, Tone } from './figure.ts';

/** Shapes and marks in few words, for the data of the figures. */

export function rect(tone: Tone, x: number, y: number, width: number, height: number): Shape {
  return { tone, d: `M${x} ${y}h${width}v${height}h${-width}z` };
}

export function circle(tone: Tone, x: number, y: number, r: number): Shape {
  return { tone, d: `M${x - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0z` };
}

export function stroke(tone: Tone, ...points: readonly Point[]): Shape {
  return { tone, d: `M${points.map((point) => point.join(' ')).join('L')}` };
}

export function area(tone: Tone, ...points: readonly Point[]): Shape {
  return { tone, d: `${stroke(tone, ...points).d}z` };
}

/** The edge of a thing that goes on beyond the figure, plumb. */
export function brokenEdge(x: number, top: number, bottom: number): Shape {
  const middle = (top + bottom) / 2;
  return stroke(
    'line',
    [x, top],
    [x, middle - 4],
    [x - 3, middle - 1],
    [x + 3, middle + 1],
    [x, middle + 4],
    [x, bottom],
  );
}

export function across(
  [from, to]: readonly [number, number],
  y: number,
  more: { readonly foot?: number; readonly tail?: readonly Point[] } = {},
): Span {
  const { foot, tail } = more;
  return {
    kind: 'span',
    from: [from, y],
    to: [to, y],
    ...(foot !== undefined && {
      feet: [
        [from, foot],
        [to, foot],
      ] as const,
    }),
    ...(tail && { tail }),
  };
}

export function upright(
  [from, to]: readonly [number, number],
  x: number,
  more: { readonly foot?: number; readonly tail?: readonly Point[] } = {},
): Span {
  const { foot, tail } = more;
  return {
    kind: 'span',
    from: [x, from],
    to: [x, to],
    ...(foot !== undefined && {
      feet: [
        [foot, from],
        [foot, to],
      ] as const,
    }),
    ...(tail && { tail }),
  };
}

export function spot(at: Point, ...way: readonly Point[]): Spot {
  return { kind: 'spot', at, way };
}

export function measure(path: string, mark: Mark, label: Measure['label']): Measure {
  return { path, mark, label };
}

export function view(words: string, x: number, anchor: Remark['anchor'] = 'middle'): Remark {
  return { words, at: [x, 140], anchor };
}
