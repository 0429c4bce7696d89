import { across, brokenEdge, measure, rect, spot, upright, view } from './draw.ts';
import type { Figure, FigureOf } from './figure.ts';

/** One end of a chip with its terminal; the next sink lies below. */
const chip = [rect('chip', 14, 34, 74, 22), brokenEdge(14, 30, 60)];

const terminal = [
  rect('terminal', 66, 30, 22, 4),
  rect('terminal', 66, 56, 22, 4),
  rect('terminal', 88, 30, 4, 30),
];

const tabs: Figure = {
  shows:
    'One end of a chip, cut through: a tab is soldered to the terminal, reaches out, and is bonded to the plate of the next sink; beside it the end of the chip with two tabs',
  shapes: [
    ...chip,
    ...terminal,
    rect('solder', 66, 60, 26, 6),
    rect('metal', 60, 66, 128, 7),
    rect('bond', 140, 73, 48, 6),
    rect('metal', 14, 79, 186, 18),
    brokenEdge(14, 75, 101),
    brokenEdge(200, 75, 101),
    // The end of the chip, from the next sink.
    rect('chip', 244, 22, 22, 74),
    rect('terminal', 266, 22, 10, 74),
    rect('metal', 264, 30, 50, 18),
    rect('metal', 264, 70, 50, 18),
    brokenEdge(244, 18, 100),
  ],
  air: [],
  measures: [
    measure('secondFace.terminalLength_m', across([66, 92], 20, { foot: 30 }), {
      at: [79, 14],
      anchor: 'middle',
    }),
    measure('secondFace.solder_m', upright([66, 60], 104, { foot: 92, tail: [[104, 32]] }), {
      at: [108, 38],
      anchor: 'start',
      rows: 2,
    }),
    measure('secondFace.tabLength_m', across([92, 140], 108, { foot: 73 }), {
      at: [134, 122],
      anchor: 'end',
    }),
    measure('secondFace.tabLanding_m', across([140, 188], 108, { foot: 79 }), {
      at: [142, 122],
      anchor: 'start',
    }),
    measure('secondFace.tabThickness_m', upright([73, 66], 196, { foot: 188, tail: [[196, 55]] }), {
      at: [206, 38],
      anchor: 'middle',
      rows: 2,
    }),
    measure('secondFace.tabWidth_m', upright([48, 30], 302, { tail: [[302, 18]] }), {
      at: [318, 14],
      anchor: 'end',
    }),
    measure('secondFace.tabCount', spot([302, 79], [302, 110]), { at: [318, 122], anchor: 'end' }),
  ],
  remarks: [
    { words: 'plate', at: [207, 92], anchor: 'start' },
    view('cut through', 100),
    view('from below', 204),
  ],
};

const withoutTabs = (bonded: boolean): Figure => ({
  shows: bonded
    ? 'One end of a chip, cut through: its second face is bonded to the plate of the next sink'
    : 'One end of a chip, cut through: its second face touches nothing',
  shapes: [
    ...(bonded ? [rect('bond', 14, 56, 78, 10)] : []),
    ...chip,
    ...terminal,
    rect('metal', 14, bonded ? 66 : 82, 186, 20),
    brokenEdge(14, bonded ? 62 : 78, bonded ? 90 : 106),
    brokenEdge(200, bonded ? 62 : 78, bonded ? 90 : 106),
  ],
  air: [],
  measures: [
    measure('secondFace.terminalLength_m', across([66, 92], 20, { foot: 30 }), {
      at: [79, 14],
      anchor: 'middle',
    }),
  ],
  remarks: [view('cut through', 90), { words: 'next sink', at: [212, bonded ? 80 : 96], anchor: 'start' }],
});

const [bonded, free] = [withoutTabs(true), withoutTabs(false)];

export const secondFace: FigureOf = (design) => ({ tabs, bonded, free })[design.secondFace.way];
