import { across, measure, rect, stroke, upright, view } from './draw.ts';
import type { Figure, FigureOf } from './figure.ts';

const figure: Figure = {
  shows:
    'Fan, cut along its axis: frame, opening and hub one inside the other, its depth, and the free space before it',
  shapes: [
    rect('sheet', 10, 10, 5, 104),
    rect('metal', 118, 12, 34, 12),
    rect('metal', 118, 100, 34, 12),
    stroke('hidden', [118, 24], [118, 100]),
    stroke('hidden', [152, 24], [152, 100]),
    rect('metal', 128, 28, 12, 18),
    rect('metal', 128, 78, 12, 18),
    rect('terminal', 122, 46, 26, 32),
  ],
  air: [
    [
      [28, 30],
      [112, 30],
    ],
    [
      [28, 94],
      [112, 94],
    ],
  ],
  measures: [
    measure('fan.size_m', upright([12, 112], 268, { foot: 152 }), { at: [273, 66], anchor: 'start' }),
    {
      ...measure('fan.opening_m', upright([24, 100], 202, { foot: 152 }), { at: [207, 66], anchor: 'start' }),
      also: 'moreFans[].opening_m',
    },
    {
      ...measure('fan.hub_m', upright([46, 78], 162, { foot: 148 }), { at: [167, 66], anchor: 'start' }),
      also: 'moreFans[].hub_m',
    },
    measure('fan.depth_m', across([118, 152], 121, { foot: 112 }), { at: [160, 124], anchor: 'start' }),
    measure('fan.inletSpace_m', across([15, 118], 74), { at: [66, 53], anchor: 'middle', rows: 2 }),
  ],
  remarks: [view('along the axis', 66)],
};

export const fan: FigureOf = () => figure;
