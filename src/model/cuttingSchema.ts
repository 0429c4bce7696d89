import * as z from 'zod/mini';
import { choice, count, number } from './schemaWords.ts';

/** How the box is cut from sheet, and how many of it. Nothing here bears on heat or air. */
export const cuttingSchema = z.strictObject({
  boxes: count([1, 1000], 'Boxes', 'How many to build.'),
  joint: choice(
    ['butt', 'slotted'],
    'Joints',
    'Of walls, floor and baffle; neck-down and collar are butted.',
  ),
  tab_m: number([0.002, 0.2], 'Tab length', 'Along the edge.', [0.006, 0.03]),
  fit_m: number(
    [0, 0.002],
    'Fit allowance',
    'On each side: slots grow by it, the baffle shrinks.',
    [0, 3e-4],
  ),
  cutter_m: number([5e-4, 0.02], 'End mill', 'Diameter.', [0.001, 0.006]),
  edge_m: number([0, 0.02], 'Edge allowance', 'At each sawn or sheared edge, dressed off.', [0, 0.003]),
  fanHole_m: number([5e-4, 0.02], 'Fan screw hole', 'Diameter.', [0.0025, 0.0055]),
  fanPitch_m: number([0, 1], 'Fan screw pitch', '0: as usual for the frame.'),
  wireHole_m: number([0, 0.1], 'Wire hole', 'In the end wall; 0: none.'),
  stockLength_m: number([0.05, 5], 'Stock sheet length', 'As bought.'),
  stockWidth_m: number([0.05, 5], 'Stock sheet width', 'As bought.'),
});
