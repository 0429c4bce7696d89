import { area, measure, rect, stroke, view } from './draw.ts';
import type { Figure, FigureOf } from './figure.ts';

const figure: Figure = {
  shows:
    'Neck-down, cut along the row: from the opening of the fan its walls slope towards the plenum, at an angle between them',
  shapes: [
    rect('metal', 22, 4, 20, 10),
    rect('metal', 22, 88, 20, 10),
    rect('terminal', 26, 38, 14, 26),
    area('sheet', [42, 10], [138, 28], [226, 28], [226, 32], [138, 32], [42, 14]),
    area('sheet', [42, 92], [138, 74], [226, 74], [226, 70], [138, 70], [42, 88]),
    stroke('hidden', [138, 32], [236, 51], [138, 70]),
  ],
  air: [
    [
      [4, 51],
      [22, 51],
    ],
    [
      [50, 51],
      [150, 51],
    ],
  ],
  measures: [
    measure(
      'plenum.neckLength_m',
      {
        kind: 'span',
        from: [42, 108],
        to: [138, 108],
        feet: [
          [42, 92],
          [138, 74],
        ],
      },
      { at: [90, 122], anchor: 'middle' },
    ),
    measure(
      'plenum.neckAngle_rad',
      { kind: 'arc', corner: [236, 51], radius: 62, from_deg: 169, to_deg: 191 },
      { at: [244, 49], anchor: 'start', rows: 2 },
    ),
  ],
  remarks: [
    { words: 'fan', at: [8, 122], anchor: 'start' },
    { words: 'plenum', at: [200, 90], anchor: 'middle' },
    view('along the row', 90),
  ],
};

export const neck: FigureOf = () => figure;
