import { across, measure, rect, spot, upright, view } from './draw.ts';
import type { Figure, FigureOf } from './figure.ts';

const figure: Figure = {
  shows:
    'An end sink, seen from above and from the side: fins side by side across the row, on a plate; the air goes up along them',
  shapes: [
    ...[0, 1, 2, 3, 4, 5].map((fin) => rect('metal', 84, 18 + fin * 14.8, 58, 6)),
    rect('metal', 142, 18, 8, 80),
    rect('chip', 150, 36, 4, 44),
    rect('metal', 222, 18, 30, 80),
    rect('metal', 252, 18, 6, 80),
    rect('chip', 258, 44, 4, 28),
  ],
  air: [
    [
      [237, 112],
      [237, 4],
    ],
  ],
  measures: [
    measure('sink.finCount', spot([98, 50.6], [66, 50.6]), { at: [63, 54], anchor: 'end' }),
    measure(
      'sink.finThickness_m',
      upright([77.2, 83.2], 76, {
        foot: 84,
        tail: [
          [76, 94],
          [68, 94],
        ],
      }),
      {
        at: [65, 92],
        anchor: 'end',
        rows: 2,
      },
    ),
    measure('sink.finHeight_m', across([84, 142], 110, { foot: 98 }), { at: [112, 124], anchor: 'middle' }),
    measure('sink.length_m', upright([18, 98], 272, { foot: 258 }), {
      at: [277, 56],
      anchor: 'start',
      rows: 2,
    }),
    measure('sink.width_m', upright([18, 98], 164, { foot: 150 }), {
      at: [169, 56],
      anchor: 'start',
      rows: 2,
    }),
    measure('sink.plate_m', across([142, 150], 110, { foot: 98, tail: [[162, 110]] }), {
      at: [165, 112],
      anchor: 'start',
      rows: 2,
    }),
  ],
  remarks: [
    { words: 'gap follows', at: [2, 14], anchor: 'start', spot: spot([92, 28.4], [62, 28.4], [54, 19]) },
    view('from above', 100),
    view('from the side', 197),
  ],
};

export const sinks: FigureOf = () => figure;
