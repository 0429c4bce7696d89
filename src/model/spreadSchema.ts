import * as z from 'zod/mini';
import { choice, flag, number, text } from './schemaWords.ts';

/** How one input varies from box to box. Only what differs from the table of usual spreads stands in a design. */
export const spreadSchema = z.strictObject({
  path: text(80, 'Input that varies', 'Rows left out: parts[].R_Ohm.'),
  kind: choice(
    ['none', 'normal', 'lognormal', 'uniform', 'triangular', 'tolerance'],
    'Shape',
    'By tolerance: even within what the design states elsewhere.',
  ),
  relative: flag('Relative', 'The size is a share of the value; otherwise in SI.'),
  size: number([0, 1e9], 'Size', 'Standard deviation; half the width where it has ends.'),
});
