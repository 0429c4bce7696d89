import { circle, rect } from './draw.ts';
import type { Figure, FigureOf, Point, Shape } from './figure.ts';

/** The kinds that a loss is known for, each with the middle of its cut. */
const kinds = [
  ['wire', 54],
  ['punched', 160],
  ['square', 266],
] as const;
const [pitch, level] = [18, 54] as const;

/** Cuts through the kinds side by side; bars lie across the way of the air. */
function grille(shows: string, path: string, isUp: boolean): Figure {
  const place = (middle: number, along: number, beside: number): Point =>
    isUp ? [middle + beside, level - along] : [middle + along, level + beside];
  const bar = (middle: number, depth: number, breadth: number, beside: number): Shape => {
    const [x, y] = place(middle, 0, beside);
    const [width, height] = isUp ? [breadth, depth] : [depth, breadth];
    return rect('metal', x - width / 2, y - height / 2, width, height);
  };
  const cuts = {
    wire: (middle: number, beside: number) => circle('metal', ...place(middle, 0, beside), 3.5),
    punched: (middle: number, beside: number) => bar(middle, 4, 12, beside),
    square: (middle: number, beside: number) => bar(middle, 10, 10, beside),
  };
  return {
    shows,
    shapes: kinds.flatMap(([kind, middle]) =>
      [-2, -1, 0, 1, 2].map((step) => cuts[kind](middle, step * pitch)),
    ),
    air: kinds.flatMap(([, middle]) =>
      [-1.5, -0.5, 0.5, 1.5].map((step) => [
        place(middle, -32, step * pitch),
        place(middle, 32, step * pitch),
      ]),
    ),
    measures: [],
    kinds: {
      path,
      options: kinds.map(([option, middle]) => ({ option, at: [middle, 112], anchor: 'middle', rows: 2 })),
    },
  };
}

const inlet = grille(
  'Cuts through guards of round wires, of punched sheet and of square-edged bars; the air comes from the left',
  'inlet.guard.kind',
  false,
);
const top = grille(
  'Cuts through grilles of round wires, of punched sheet and of square-edged bars; the air goes up',
  'outlet.kind',
  true,
);

export const guard: FigureOf = () => inlet;
export const outlet: FigureOf = () => top;
