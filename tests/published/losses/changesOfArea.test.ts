import { describe, expect, test } from 'vitest';
import { channelExitDucted } from '../../../src/core/losses/channelExitDucted.ts';
import { diffuserLoss } from '../../../src/core/losses/diffuserLoss.ts';
import { finEntranceLoss } from '../../../src/core/losses/finEntranceLoss.ts';
import { neckDownLoss } from '../../../src/core/losses/neckDownLoss.ts';
import { suddenContraction } from '../../../src/core/losses/suddenContraction.ts';
import { suddenExpansion } from '../../../src/core/losses/suddenExpansion.ts';
import { coreEntranceLoss, venaContracta } from '../../../src/core/losses/venaContracta.ts';

// Python library fluids 1.0.22, diffuser_sharp (Borda–Carnot).
test.each([
  [0.5, 0.25],
  [0.3, 0.49],
])('sudden widening, area ratio %f: %f', (ratio, loss) =>
  expect(suddenExpansion(ratio)).toBeCloseTo(loss, 12),
);

// Python library fluids 1.0.22, contraction_sharp (Rennels), as the second opinion on Idelchik's form.
test.each([
  [0.9, 0.0364],
  [0.7, 0.1802],
  [0.5, 0.3434],
  [0.3, 0.4717],
])('sudden narrowing, area ratio %f: %f elsewhere', (ratio, loss) => {
  const within = 0.09; // two handbooks; absolute, on velocity heads of the small area
  expect(Math.abs(suddenContraction(ratio) - loss)).toBeLessThan(within);
});

describe('Plane jet into fin channels (von Mises) and what follows from it', () => {
  // Independent computation of the free-streamline form.
  test.each([
    // σ, C_c, K_c with developed friction, K_c with apparent friction, 0.42(1 − σ²), K_e developed, (1 − σ)²
    [0, 0.611, 0.805, 0.405, 0.42, 1, 1],
    [0.2, 0.6158, 0.789, 0.389, 0.403, 0.56, 0.64],
    [0.4, 0.6314, 0.741, 0.341, 0.353, 0.2, 0.36],
    [0.5, 0.6444, 0.705, 0.305, 0.315, 0.05, 0.25],
    [0.6, 0.6621, 0.661, 0.261, 0.269, -0.08, 0.16],
    [0.8, 0.7223, 0.548, 0.148, 0.151, -0.28, 0.04],
  ])('σ %f', (sigma, contraction, developed, apparent, simple, exit, flat) => {
    expect(venaContracta(sigma)).toBeCloseTo(contraction, 4);
    expect(Math.abs(coreEntranceLoss(sigma, 1.2) - developed)).toBeLessThan(6e-4); // half a unit, C_c rounded
    expect(Math.abs(coreEntranceLoss(sigma, 1) - apparent)).toBeLessThan(6e-4); // half a unit, C_c rounded
    expect(Math.abs(finEntranceLoss(sigma) - simple)).toBeLessThan(5.01e-4);
    expect(channelExitDucted(sigma, 1.2)).toBeCloseTo(exit, 6);
    expect(channelExitDucted(sigma, 1)).toBeCloseTo(flat, 6);
  });

  // Kays & London's laminar plate curve as commonly fitted, 0.8 − 0.4σ² (from memory).
  test.each([0, 0.2, 0.4, 0.6, 0.8])('σ %f: the classic curve goes with developed friction', (sigma) => {
    const within = 0.006; // stated agreement
    expect(Math.abs(coreEntranceLoss(sigma, 1.2) - (0.8 - 0.4 * sigma * sigma))).toBeLessThan(within);
  });

  // Function K_e_ParallelPlateHeader of a public equation-solver manual: Re 4000, L/D 10, σ 0.4.
  test('turbulent exit at σ 0.4: 0.3542', () => {
    const within = 0.009; // the profile factor of the 1/7 law, 64/63, is not theirs
    expect(Math.abs(channelExitDucted(0.4, 64 / 63) - 0.3542)).toBeLessThan(within);
  });
});

const ratio = (40 / 60) ** 2;
const rad = (degrees: number) => (degrees * Math.PI) / 180;

// Python library fluids 1.0.22, contraction_conical (Rennels), 60 → 40 mm.
test.each([
  [10, 0.031],
  [30, 0.041],
  [60, 0.091],
  [90, 0.155],
  [180, 0.386],
])('neck-down 60 → 40 mm at %d°: %f', (angle, loss) =>
  expect(neckDownLoss(rad(angle), ratio)).toBeCloseTo(loss, 6),
);

// Python library fluids 1.3.1, contraction_conical (Rennels) with a Darcy factor of 0.02: other area ratios.
test.each([
  [60, 0.25, 0.113],
  [90, 0.25, 0.196],
  [60, 0.7, 0.0476],
  [90, 0.7, 0.0784],
])('neck-down at %d°, area ratio %f: %f', (angle, areas, loss) => {
  const within = 0.03; // scaling one table with the sudden narrowing; absolute, on velocity heads of the narrow end
  expect(Math.abs(neckDownLoss(rad(angle), areas) - loss)).toBeLessThan(within);
});

// Python library fluids 1.0.22, diffuser_conical (Rennels), 40 → 60 mm.
test.each([
  [10, 0.059],
  [20, 0.134],
  [30, 0.253],
  [60, 0.373],
  [180, 0.31],
])('diffuser 40 → 60 mm at %d°: %f', (angle, loss) =>
  expect(diffuserLoss(rad(angle), ratio)).toBeCloseTo(loss, 6),
);

// Python library fluids 1.3.1, diffuser_conical (Rennels) with a Darcy factor of 0.02, between the table's angles.
test.each([
  [15, 0.0891],
  [45, 0.3451],
  [90, 0.341],
  [120, 0.3283],
])('diffuser 40 → 60 mm at %d°: %f', (angle, loss) => {
  const within = 0.005; // table of three digits, interpolated at 15°; absolute, on velocity heads of the narrow end
  expect(Math.abs(diffuserLoss(rad(angle), ratio) - loss)).toBeLessThan(within);
});
