import { measure, rect, upright, view } from './draw.ts';
import type { Figure, FigureOf } from './figure.ts';

/** Sinks with a chip between each two of them, over the slot. */
const row = [0, 1, 2].flatMap((sink) => [
  rect('metal', 86 + sink * 46, 10, 38, 40),
  ...(sink < 2 ? [rect('chip', 126 + sink * 46, 20, 4, 20)] : []),
]);

const figureWith = (hasBaffle: boolean): Figure => ({
  shows: 'Plenum, cut along the row: the air comes in from the fan and turns up under the sinks',
  shapes: [
    ...row,
    ...(hasBaffle ? [rect('sheet', 54, 54, 30, 6), rect('sheet', 218, 54, 20, 6)] : []),
    rect('sheet', 48, 10, 6, 50),
    rect('sheet', 48, 110, 196, 6),
    rect('sheet', 238, 10, 6, 100),
  ],
  air: [
    [
      [10, 92],
      [105, 92],
      [105, 54],
    ],
    [
      [10, 98],
      [151, 98],
      [151, 54],
    ],
    [
      [10, 104],
      [197, 104],
      [197, 54],
    ],
  ],
  measures: [
    measure('plenum.height_m', upright([110, 60], 258, { foot: 244 }), {
      at: [264, 82],
      anchor: 'start',
      rows: 2,
    }),
  ],
  remarks: [view('along the row', 151)],
});

const [open, covered] = [figureWith(false), figureWith(true)];

export const plenum: FigureOf = (design) => (design.baffle.fitted ? covered : open);
