import { describe, test } from 'vitest';
import { punchedPlateLoss } from '../../../src/core/losses/punchedPlateLoss.ts';
import { squareGrillLoss } from '../../../src/core/losses/squareGrillLoss.ts';
import { wireGuardLoss } from '../../../src/core/losses/wireGuardLoss.ts';
import { published } from '../../helpers/published.ts';

const quantity = 'loss coefficient';

describe('Plates and grilles on the approach velocity', () => {
  const idelchik = published({
    source: 'idelchik',
    where: 'diagram 4-14, the formula in a separate program',
    kind: 'worked again',
    methods: ['punchedPlateLoss'],
  });
  const blevins = (where: string) =>
    published({ source: 'blevins1984', where, kind: 'worked again', methods: ['squareGrillLoss'] });

  test.each([
    [0.4, 8.758, 7.125],
    [0.5, 4.37, 4.0],
    [0.6, 2.257, 2.333],
    [0.7, 1.148, 1.347],
    [0.8, 0.538, 0.719],
    [0.9, 0.196, 0.296],
  ])('free share %f: thin plate %f, square edges %f', (free, plate, grill) => {
    idelchik.says(quantity, punchedPlateLoss(free), plate.toFixed(3));
    blevins('the formula in a separate program').says(quantity, squareGrillLoss(free), grill.toFixed(3));
  });

  test('free share 0.5: thin plate 4.3695', () => idelchik.says(quantity, punchedPlateLoss(0.5), '4.3695'));

  test('free share 0.45: square edges 5.2963', () =>
    blevins('documentation of the Python library fluids 1.0.22, square_edge_grill').says(
      quantity,
      squareGrillLoss(0.45),
      '5.2963',
    ));
});

// Seen at 0.3, 0.5 and 0.7 in 1.0.22, the whole table in 1.3.1.
const roundWires = published({
  source: 'blevins1984',
  where: 'table of the Python library fluids, round_edge_grill',
  kind: 'worked again',
  methods: ['wireGuardLoss'],
});
test.each([
  [0.3, 2.0],
  [0.4, 1.0],
  [0.5, 0.6],
  [0.6, 0.4],
  [0.7, 0.2],
])('guard of round wires, free share %f: %f', (free, loss) =>
  roundWires.says(quantity, wireGuardLoss(free), loss.toFixed(1), {
    off: 5e-11,
    because: 'a knot of the table',
  }),
);
