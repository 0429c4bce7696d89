import { circle, measure, rect, spot, upright, view } from './draw.ts';
import type { Figure, FigureOf } from './figure.ts';

const figure: Figure = {
  shows:
    'Bond line between the plate of a sink and a chip, cut through and seen from its face: a filament keeps the two apart, adhesive fills the rest',
  shapes: [
    rect('chip', 80, 26, 112, 24),
    rect('bond', 80, 50, 112, 22),
    rect('metal', 72, 72, 128, 26),
    circle('terminal', 104, 61, 11),
    circle('terminal', 168, 61, 11),
    circle('open', 136, 61, 6.5),
    // From the face: the filament lies in a loop under the chip.
    rect('bond', 236, 26, 56, 72),
    { tone: 'filament', d: 'M250 20V84a7 7 0 0 0 14 0V40a7 7 0 0 1 14 0V104' },
    circle('open', 257, 50, 3.5),
    circle('open', 271, 78, 3.5),
    circle('open', 285, 52, 3.5),
  ],
  air: [],
  measures: [
    measure('bond.filament_m', upright([50, 72], 64, { foot: 80 }), { at: [57, 58], anchor: 'end', rows: 2 }),
    measure('bond.filamentLength_m', spot([278, 96], [290, 112]), { at: [318, 124], anchor: 'end' }),
    measure('bond.voidShare', spot([136, 61], [136, 16]), { at: [136, 12], anchor: 'middle' }),
    measure('bond.contact_m2KPerW', spot([88, 72], [70, 108]), { at: [70, 120], anchor: 'middle' }),
  ],
  remarks: [
    { words: 'chip', at: [75, 41], anchor: 'end' },
    { words: 'plate', at: [67, 93], anchor: 'end' },
    view('cut through', 104),
    view('from the face', 200),
  ],
};

export const bonds: FigureOf = () => figure;
