import { describe, test } from 'vitest';
import { baffleSlotLoss } from '../../../src/core/losses/baffleSlotLoss.ts';
import { exitLoss } from '../../../src/core/losses/exitLoss.ts';
import { mitreBendLoss } from '../../../src/core/losses/mitreBendLoss.ts';
import { slotDischarge } from '../../../src/core/losses/slotDischarge.ts';
import { published } from '../../helpers/published.ts';

test.each([
  ['rennels2012', '1.2021'],
  ['Miller, Internal Flow Systems, at Re 1e5; as coded in fluids 1.0.22', '1.1757'],
])('90° mitre after %s: %s', (source, loss) => {
  const fluids = published({
    source,
    where: 'Python library fluids 1.0.22',
    kind: 'computed elsewhere',
    methods: ['mitreBendLoss'],
  });
  fluids.says('loss coefficient', mitreBendLoss(), loss, {
    off: 0.03,
    because: 'two handbooks, ours stated with two digits',
  });
});

test('baffle slot with a turn: inside the computed band of 2.0 to 2.45', () => {
  const solved = published({
    source: 'ownComputation',
    where: 'two-dimensional flow behind a slot under fins, middle of the band',
    kind: 'computed elsewhere',
    methods: ['baffleSlotLoss'],
  });
  solved.says('loss coefficient', baffleSlotLoss(), '2.225', {
    off: 0.225,
    because: 'half the width of the computed band',
  });
});

// 1 × 50 mm, 20 Pa, 1.184 kg/m³, C_d 0.61.
test('leak through a sharp slot: 1.7728e-4 m³/s', () => {
  const flow = slotDischarge(0.5) * 1e-3 * 50e-3 * Math.sqrt((2 * 20) / 1.184);
  const program = published({
    source: 'ownComputation',
    where: 'law of the orifice in a separate program',
    kind: 'worked again',
    methods: ['slotDischarge'],
  });
  program.says('flow [m³/s]', flow, '1.7728e-4');
});

describe('Velocity heads', () => {
  // K 10 at 3 m/s and 1.184 kg/m³ is 53.28 Pa; the exit is one of the ten.
  test('ten velocity heads at 3 m/s are 53.28 Pa', () => {
    const hand = published({
      source: 'bordaCarnot',
      where: 'worked by hand',
      kind: 'worked again',
      methods: ['exitLoss'],
    });
    hand.says('pressure [Pa]', 10 * exitLoss() * 0.5 * 1.184 * 9, '53.28', { off: 5e-11, because: 'exact' });
  });
});
