import { describe, expect, test } from 'vitest';
import { prepareTransient, respond } from '../../../src/core/heat/transient.ts';

// 5 W into a chip (0.5 J/K), 5 K/W to a sink (40 J/K), 3 K/W to the room; worked in a separate program.
describe('Chip on a sink, two capacities', () => {
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
    expect(1 / (fast ?? 0)).toBeCloseTo(2.4685, 5);
    expect(1 / (slow ?? 0)).toBeCloseTo(121.5315, 4);
  });

  test.each([
    [2.5, 15.8351, 0.11371, 5],
    [10, 25.1781, 0.90382, 5],
    [60, 30.4584, 5.6547, 4],
    [120, 34.1762, 9.296, 4],
    [300, 38.6757, 13.703, 4],
  ])('after %f s the chip is %f K and the sink %f K warmer', (time_s, chip_K, sink_K, digits) => {
    const T_K = warmedFor(time_s);
    expect(T_K[0]).toBeCloseTo(chip_K, 4);
    expect(T_K[1]).toBeCloseTo(sink_K, digits);
  });

  test('ends at 40 and 15 K', () => {
    const T_K = warmedFor(1e5);
    expect(T_K[0]).toBeCloseTo(40, 9);
    expect(T_K[1]).toBeCloseTo(15, 9);
  });
});
