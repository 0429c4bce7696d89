import { describe, test } from 'vitest';
import { prepareTransient, respond } from '../../../src/core/heat/transient.ts';
import { published } from '../../helpers/published.ts';

// 5 W into a chip (0.5 J/K), 5 K/W to a sink (40 J/K), 3 K/W to the room.
describe('Chip on a sink, two capacities', () => {
  const program = published({
    source: 'ownComputation',
    where: 'exact solution in a separate program',
    kind: 'computed elsewhere',
    methods: ['transient'],
  });
  const modes = prepareTransient({
    n: 2,
    capacity_JPerK: Float64Array.of(0.5, 40),
    conductance_WPerK: Float64Array.of(0, 1 / 5, 1 / 5, 0),
    toFixed_WPerK: Float64Array.of(0, 1 / 3),
  });
  const warmedFor = (time_s: number) =>
    respond(
      modes,
      new Float64Array(2),
      Float64Array.of(5, 0),
      new Float64Array(2),
      time_s,
      new Float64Array(2),
    );

  test('has time constants of 2.46850 and 121.5315 s', () => {
    const [slow, fast] = Array.from(modes.rate_PerS).sort((a, b) => a - b);
    program.says('short time constant [s]', 1 / (fast ?? 0), '2.46850');
    program.says('long time constant [s]', 1 / (slow ?? 0), '121.5315');
  });

  test.each([
    [2.5, 15.8351, 0.11371, 5],
    [10, 25.1781, 0.90382, 5],
    [60, 30.4584, 5.6547, 4],
    [120, 34.1762, 9.296, 4],
    [300, 38.6757, 13.703, 4],
  ])('after %f s the chip is %f K and the sink %f K warmer', (time_s, chip_K, sink_K, digits) => {
    const T_K = warmedFor(time_s);
    program.says('temperature rise of the chip [K]', T_K[0] as number, chip_K.toFixed(4));
    program.says('temperature rise of the sink [K]', T_K[1] as number, sink_K.toFixed(digits));
  });

  test('ends at 40 and 15 K', () => {
    const T_K = warmedFor(1e5);
    const exactly = { off: 5e-10, because: 'exact' };
    program.says('temperature rise of the chip [K]', T_K[0] as number, '40', exactly);
    program.says('temperature rise of the sink [K]', T_K[1] as number, '15', exactly);
  });
});
