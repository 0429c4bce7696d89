import { across, area, measure, rect, stroke, upright, view } from './draw.ts';
import type { Figure, FigureOf } from './figure.ts';

const figure: Figure = {
  shows: 'Box, cut across the row and along it, and tilted about the long axis of the row',
  shapes: [
    rect('sheet', 76, 20, 6, 84),
    rect('sheet', 146, 20, 6, 84),
    rect('sheet', 82, 98, 64, 6),
    stroke('hidden', [82, 20], [146, 20]),
    ...[0, 1, 2, 3].map((fin) => rect('metal', 96 + fin * 11, 46, 4, 38)),
    rect('sheet', 166, 20, 6, 60),
    rect('sheet', 246, 20, 6, 84),
    rect('sheet', 166, 98, 80, 6),
    stroke('hidden', [172, 20], [246, 20]),
    ...[0, 1, 2].map((sink) => rect('metal', 183 + sink * 18, 46, 14, 38)),
    // A box that leans by an angle whose sides are 18 and 60.
    area('line', [276, 98], [294, 38], [315, 44.3], [297, 104.3]),
    area('metal', [284.6, 91.2], [295.6, 54.4], [305.2, 57.3], [294.2, 94.1]),
    stroke('hidden', [276, 98], [276, 28]),
  ],
  air: [
    [
      [304.5, 41],
      [310.5, 21],
    ],
  ],
  measures: [
    measure('box.headroom_m', upright([46, 20], 114, { tail: [[114, 15]] }), {
      at: [114, 12],
      anchor: 'middle',
    }),
    measure('box.sheet_m', across([82, 76], 70, { tail: [[67, 70]] }), {
      at: [64, 67],
      anchor: 'end',
      rows: 2,
    }),
    measure('box.width_m', across([82, 146], 111, { foot: 104 }), { at: [114, 124], anchor: 'middle' }),
    measure('box.length_m', across([172, 246], 111, { foot: 104 }), { at: [210, 124], anchor: 'middle' }),
    measure(
      'box.tilt_rad',
      { kind: 'arc', corner: [276, 98], radius: 62.6, from_deg: 270, to_deg: 286.7 },
      { at: [276, 22], anchor: 'middle' },
    ),
  ],
  remarks: [view('across the row', 112), view('along it', 205)],
};

export const box: FigureOf = () => figure;
