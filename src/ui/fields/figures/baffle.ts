import { across, brokenEdge, measure, rect, spot, upright, view } from './draw.ts';
import type { Figure, FigureOf, Shape } from './figure.ts';

/** The cut goes through the fins of a sink: they stand side by side across the row, and the air rises between them. */
const fins: Shape[] = [0, 1, 2, 3, 4].map((fin) => rect('metal', 104 + fin * 13, 28, 6, 52));

const fitted: Figure = {
  shows:
    'Baffle, cut across the row and seen from above: slot under the fins, collar beside them, gaps at sides and ends, crack under its edge',
  shapes: [
    rect('sheet', 10, 93, 100, 7),
    rect('sheet', 156, 93, 51, 7),
    rect('sheet', 87, 50, 5, 43),
    rect('sheet', 174, 50, 5, 43),
    rect('sheet', 214, 22, 6, 100),
    rect('sheet', 196, 108, 18, 6),
    brokenEdge(10, 91, 102),
    ...fins,
    // The end of the row from above: its last face is open tips.
    rect('chip', 240, 36, 4, 22),
    rect('metal', 244, 28, 6, 38),
    ...[0, 1, 2, 3].map((fin) => rect('metal', 250, 28 + fin * 11.3, 37, 4)),
    rect('sheet', 238, 19, 66, 4),
    rect('sheet', 238, 71, 66, 4),
    rect('sheet', 299, 23, 5, 48),
    brokenEdge(238, 16, 78),
  ],
  air: [
    [
      [126.5, 106],
      [126.5, 8],
    ],
    [
      [139.5, 106],
      [139.5, 8],
    ],
    [
      [189, 124],
      [189, 104],
      [210.5, 104],
      [210.5, 76],
    ],
  ],
  measures: [
    measure('baffle.sideClearance_m', across([104, 92], 38, { foot: 50, tail: [[83, 38]] }), {
      at: [80, 29],
      anchor: 'end',
      rows: 2,
    }),
    measure('baffle.endClearance_m', across([287, 299], 83, { foot: 66 }), { at: [318, 98], anchor: 'end' }),
    measure('baffle.slotWidth_m', across([110, 156], 110, { foot: 100 }), {
      at: [133, 124],
      anchor: 'middle',
    }),
    measure(
      'baffle.standOff_m',
      {
        kind: 'span',
        from: [70, 80],
        to: [70, 93],
        feet: [
          [104, 80],
          [87, 93],
        ],
      },
      { at: [62, 87], anchor: 'end' },
    ),
    measure(
      'baffle.collar_m',
      {
        kind: 'span',
        from: [70, 80],
        to: [70, 50],
        feet: [
          [104, 80],
          [87, 50],
        ],
      },
      { at: [64, 58], anchor: 'end', rows: 2 },
    ),
    measure('baffle.leakGap_m', spot([201, 104], [226, 110]), { at: [229, 112], anchor: 'start', rows: 2 }),
    measure(
      'baffle.sheet_m',
      upright([93, 100], 99, {
        tail: [
          [99, 119],
          [91, 119],
        ],
      }),
      { at: [88, 123], anchor: 'end' },
    ),
  ],
  remarks: [view('across the row', 133), { words: 'from above', at: [279, 12], anchor: 'middle' }],
};

const left: Figure = {
  shows: 'Sinks without a baffle, cut across the row: the air may slip past beside them',
  shapes: [
    rect('sheet', 74, 12, 6, 112),
    rect('sheet', 186, 12, 6, 112),
    rect('sheet', 80, 118, 106, 6),
    ...fins,
  ],
  air: [92, 113.5, 126.5, 139.5, 152.5, 174].map((x) => [
    [x, 112],
    [x, 6],
  ]),
  measures: [],
  remarks: [view('across the row', 133)],
};

export const baffle: FigureOf = (design) => (design.baffle.fitted ? fitted : left);
