import { across, measure, rect, upright, view } from './draw.ts';
import type { Figure, FigureOf } from './figure.ts';

const figure: Figure = {
  shows:
    'Chip resistor, seen from its film face and cut through: length from terminal to terminal across the row, width the way of the air, which goes up',
  shapes: [
    rect('chip', 48, 30, 76, 54),
    rect('terminal', 48, 30, 12, 54),
    rect('terminal', 112, 30, 12, 54),
    rect('chip', 186, 52, 84, 26),
    rect('bond', 198, 44, 60, 8),
    rect('terminal', 182, 48, 4, 34),
    rect('terminal', 270, 48, 4, 34),
  ],
  air: [
    [
      [34, 100],
      [34, 18],
    ],
  ],
  measures: [
    measure('parts[].length_m', across([48, 124], 98, { foot: 84 }), { at: [86, 112], anchor: 'middle' }),
    measure('parts[].width_m', upright([30, 84], 134, { foot: 124 }), {
      at: [139, 54],
      anchor: 'start',
      rows: 2,
    }),
    measure('parts[].thickness_m', upright([78, 52], 284, { foot: 270 }), {
      at: [286, 96],
      anchor: 'middle',
      rows: 2,
    }),
    measure('parts[].coating_m', upright([52, 44], 228, { tail: [[228, 26]] }), {
      at: [228, 20],
      anchor: 'middle',
    }),
  ],
  remarks: [view('from the film face', 86), view('cut through', 203)],
};

export const resistors: FigureOf = () => figure;
