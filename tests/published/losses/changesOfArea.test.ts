import { describe, test } from 'vitest';
import type { CheckKind } from '../../../src/core/card.ts';
import { channelExitDucted } from '../../../src/core/losses/channelExitDucted.ts';
import { diffuserLoss } from '../../../src/core/losses/diffuserLoss.ts';
import { finEntranceLoss } from '../../../src/core/losses/finEntranceLoss.ts';
import { neckDownLoss } from '../../../src/core/losses/neckDownLoss.ts';
import { suddenContraction } from '../../../src/core/losses/suddenContraction.ts';
import { suddenExpansion } from '../../../src/core/losses/suddenExpansion.ts';
import { coreEntranceLoss, venaContracta } from '../../../src/core/losses/venaContracta.ts';
import type { SourceKey } from '../../../src/core/sources.ts';
import { published } from '../../helpers/published.ts';

const fluids = (source: SourceKey, where: string, method: string, kind: CheckKind = 'computed elsewhere') =>
  published({ source, where: `Python library ${where}`, kind, methods: [method] });
const quantity = 'loss coefficient';

test.each([
  [0.5, 0.25],
  [0.3, 0.49],
])('sudden widening, area ratio %f: %f', (ratio, loss) =>
  fluids('bordaCarnot', 'fluids 1.0.22, diffuser_sharp', 'suddenExpansion', 'worked again').says(
    quantity,
    suddenExpansion(ratio),
    String(loss),
    { off: 5e-13, because: 'exact' },
  ),
);

// A second opinion on Idelchik's form.
test.each([
  [0.9, 0.0364],
  [0.7, 0.1802],
  [0.5, 0.3434],
  [0.3, 0.4717],
])('sudden narrowing, area ratio %f: %f by Rennels', (ratio, loss) => {
  fluids('rennels2012', 'fluids 1.0.22, contraction_sharp', 'suddenContraction').says(
    quantity,
    suddenContraction(ratio),
    String(loss),
    { off: 0.09, because: 'two handbooks; on velocity heads of the small area' },
  );
});

describe('Plane jet into fin channels (von Mises) and what follows from it', () => {
  const streamline = published({
    source: 'ownComputation',
    where: 'free-streamline form and what follows from it, in a separate program',
    kind: 'worked again',
    methods: ['coreEntranceLoss', 'finEntranceLoss', 'channelExitDucted'],
  });
  const rounded = { off: 6e-4, because: 'half a unit of the last digit, C_c rounded' };
  test.each([
    // σ, C_c, K_c with developed friction, K_c with apparent friction, 0.42(1 − σ²), K_e developed, (1 − σ)²
    [0, 0.611, 0.805, 0.405, 0.42, 1, 1],
    [0.2, 0.6158, 0.789, 0.389, 0.403, 0.56, 0.64],
    [0.4, 0.6314, 0.741, 0.341, 0.353, 0.2, 0.36],
    [0.5, 0.6444, 0.705, 0.305, 0.315, 0.05, 0.25],
    [0.6, 0.6621, 0.661, 0.261, 0.269, -0.08, 0.16],
    [0.8, 0.7223, 0.548, 0.148, 0.151, -0.28, 0.04],
  ])('σ %f', (sigma, contraction, developed, apparent, simple, exit, flat) => {
    const exact = { off: 5e-7, because: 'exact' };
    streamline.says('contraction', venaContracta(sigma), contraction.toFixed(4));
    streamline.says('entrance, developed', coreEntranceLoss(sigma, 1.2), developed.toFixed(3), rounded);
    streamline.says('entrance, apparent', coreEntranceLoss(sigma, 1), apparent.toFixed(3), rounded);
    streamline.says('entrance, simple', finEntranceLoss(sigma), simple.toFixed(3));
    streamline.says('exit, developed', channelExitDucted(sigma, 1.2), String(exit), exact);
    streamline.says('exit, flat profile', channelExitDucted(sigma, 1), String(flat), exact);
  });

  // The laminar plate curve as commonly fitted, 0.8 − 0.4σ².
  const kays = published({
    source: 'kaysLondon',
    where: 'laminar plate curve as commonly fitted, 0.8 − 0.4σ²',
    kind: 'from memory',
    methods: ['coreEntranceLoss'],
  });
  test.each([0, 0.2, 0.4, 0.6, 0.8])('σ %f: the classic curve goes with developed friction', (sigma) => {
    const curve = (0.8 - 0.4 * sigma * sigma).toFixed(3);
    kays.says(quantity, coreEntranceLoss(sigma, 1.2), curve, { off: 0.006, because: 'stated agreement' });
  });

  test('turbulent exit at σ 0.4: 0.3542', () => {
    const manual = published({
      source: 'Manual of a public equation solver, exit loss of a header of parallel plates',
      where: 'Re 4000, L/D 10',
      kind: 'computed elsewhere',
      methods: ['channelExitDucted'],
    });
    manual.says(quantity, channelExitDucted(0.4, 64 / 63), '0.3542', {
      off: 0.009,
      because: 'the profile factor of the 1/7 law, 64/63, is not theirs',
    });
  });
});

const ratio = (40 / 60) ** 2;
const rad = (degrees: number) => (degrees * Math.PI) / 180;

// The table itself was taken from there.
test.each([
  [10, 0.031],
  [30, 0.041],
  [60, 0.091],
  [90, 0.155],
  [180, 0.386],
])('neck-down 60 → 40 mm at %d°: %f', (angle, loss) =>
  fluids('rennels2012', 'fluids 1.0.22, contraction_conical', 'neckDownLoss', 'worked again').says(
    quantity,
    neckDownLoss(rad(angle), ratio),
    String(loss),
    { off: 5e-7, because: 'a knot of the table' },
  ),
);

// Other area ratios, with a Darcy factor of 0.02.
test.each([
  [60, 0.25, 0.113],
  [90, 0.25, 0.196],
  [60, 0.7, 0.0476],
  [90, 0.7, 0.0784],
])('neck-down at %d°, area ratio %f: %f', (angle, areas, loss) => {
  fluids('rennels2012', 'fluids 1.3.1, contraction_conical', 'neckDownLoss').says(
    quantity,
    neckDownLoss(rad(angle), areas),
    String(loss),
    {
      off: 0.03,
      because: 'one table scaled with the sudden narrowing; on velocity heads of the narrow end',
    },
  );
});

// The table itself was taken from there.
test.each([
  [10, 0.059],
  [20, 0.134],
  [30, 0.253],
  [60, 0.373],
  [180, 0.31],
])('diffuser 40 → 60 mm at %d°: %f', (angle, loss) =>
  fluids('rennels2012', 'fluids 1.0.22, diffuser_conical', 'diffuserLoss', 'worked again').says(
    quantity,
    diffuserLoss(rad(angle), ratio),
    String(loss),
    { off: 5e-7, because: 'a knot of the table' },
  ),
);

// Between the table's angles, with a Darcy factor of 0.02.
test.each([
  [15, 0.0891],
  [45, 0.3451],
  [90, 0.341],
  [120, 0.3283],
])('diffuser 40 → 60 mm at %d°: %f', (angle, loss) => {
  fluids('rennels2012', 'fluids 1.3.1, diffuser_conical', 'diffuserLoss').says(
    quantity,
    diffuserLoss(rad(angle), ratio),
    String(loss),
    {
      off: 0.005,
      because: 'table of three digits, interpolated at 15°; on velocity heads of the narrow end',
    },
  );
});
