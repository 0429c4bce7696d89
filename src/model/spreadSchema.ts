import * as z from 'zod/mini';
import { choice, flag, number, text } from './schemaWords.ts';

/** How one input varies from box to box. Only what differs from the table of usual spreads stands in a design. */
export const spreadSchema = z.strictObject({
  path: text(80, 'Input that varies', 'Its place, rows left out: parts[].ceramic_WPerMK.'),
  kind: choice(
    ['none', 'normal', 'lognormal', 'uniform', 'triangular', 'tolerance'],
    'Shape',
    'None, normal, skewed (lognormal), even, triangular, or even within the tolerance stated elsewhere in the design.',
  ),
  relative: flag('Relative', 'On: the size is a share of the value. Off: in the SI unit of the input.'),
  size: number(
    [0, 1e9],
    'Size',
    'One standard deviation of a normal or skewed spread, half the width of an even or triangular one.',
  ),
});
