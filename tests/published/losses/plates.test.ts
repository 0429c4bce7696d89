import { describe, expect, test } from 'vitest';
import { punchedPlateLoss } from '../../../src/core/losses/punchedPlateLoss.ts';
import { squareGrillLoss } from '../../../src/core/losses/squareGrillLoss.ts';
import { wireGuardLoss } from '../../../src/core/losses/wireGuardLoss.ts';

// Idelchik, diagram 4-14 (read in the documentation of the Modelica Standard Library) and Blevins' square-edged grill
// (read in the documentation of the Python library fluids 1.0.22), worked in a separate program.
describe('Plates and grilles on the approach velocity', () => {
  test.each([
    [0.4, 8.758, 7.125],
    [0.5, 4.37, 4.0],
    [0.6, 2.257, 2.333],
    [0.7, 1.148, 1.347],
    [0.8, 0.538, 0.719],
    [0.9, 0.196, 0.296],
  ])('free share %f: thin plate %f, square edges %f', (free, plate, grill) => {
    expect(punchedPlateLoss(free)).toBeCloseTo(plate, 3);
    expect(squareGrillLoss(free)).toBeCloseTo(grill, 3);
  });

  test('free share 0.5: thin plate 4.3695', () => expect(punchedPlateLoss(0.5)).toBeCloseTo(4.3695, 4));

  // Documentation of the Python library fluids 1.0.22, square_edge_grill.
  test('free share 0.45: square edges 5.2963', () => expect(squareGrillLoss(0.45)).toBeCloseTo(5.2963, 4));
});

// Python library fluids, round_edge_grill (Blevins): 0.3, 0.5 and 0.7 seen in 1.0.22, the whole table in 1.3.1.
test.each([
  [0.3, 2.0],
  [0.4, 1.0],
  [0.5, 0.6],
  [0.6, 0.4],
  [0.7, 0.2],
])('guard of round wires, free share %f: %f', (free, loss) =>
  expect(wireGuardLoss(free)).toBeCloseTo(loss, 10),
);
