import { describe, expect, test } from 'vitest';
import { prepareTransient, respond } from '../../../../src/core/heat/transient.ts';

/** Four nodes: film, body, plate, fins; film to body to plate to fins, body to fins too; plate and fins to the air. */
const network = {
  n: 4,
  capacity_JPerK: Float64Array.of(0.002, 0.04, 3, 5),
  // biome-format: a matrix
  conductance_WPerK: Float64Array.of(0, 0.9, 0, 0, 0.9, 0, 0.13, 0.02, 0, 0.13, 0, 4, 0, 0.02, 4, 0),
  toFixed_WPerK: Float64Array.of(0, 0, 0.05, 0.6),
};
const power_W = Float64Array.of(3, 0, 0, 0);
const fixed_K = Float64Array.of(0, 0, 300, 310);
const start_K = Float64Array.of(330, 320, 300, 290);

/** What the equations ask of each node: dT/dt in K/s. */
function slope(T_K: Float64Array): Float64Array {
  return T_K.map((T, i) => {
    let heat_W = (power_W[i] ?? 0) + (network.toFixed_WPerK[i] ?? 0) * ((fixed_K[i] ?? 0) - T);
    for (let j = 0; j < 4; j++) heat_W += (network.conductance_WPerK[4 * i + j] ?? 0) * ((T_K[j] ?? 0) - T);
    return heat_W / (network.capacity_JPerK[i] ?? 1);
  });
}

/** Classical fourth-order steps, small against the fastest time constant. */
function stepped(time_s: number, steps: number): Float64Array {
  const dt_s = time_s / steps;
  const along = (T: Float64Array, k: Float64Array, share: number) =>
    T.map((v, i) => v + share * dt_s * (k[i] ?? 0));
  let T_K = start_K;
  for (let s = 0; s < steps; s++) {
    const a = slope(T_K);
    const b = slope(along(T_K, a, 0.5));
    const c = slope(along(T_K, b, 0.5));
    const d = slope(along(T_K, c, 1));
    T_K = T_K.map((v, i) => v + (dt_s / 6) * ((a[i] ?? 0) + 2 * (b[i] ?? 0) + 2 * (c[i] ?? 0) + (d[i] ?? 0)));
  }
  return T_K;
}

describe('respond', () => {
  const modes = prepareTransient(network);
  const restAfter = (time_s: number) =>
    respond(modes, start_K, power_W, fixed_K, time_s, new Float64Array(4));

  test.each([0.01, 0.5, 5])('agrees with thousands of small steps after %f s', (time_s) => {
    const exact = restAfter(time_s);
    for (const [i, T] of stepped(time_s, 20_000).entries()) expect(exact[i]).toBeCloseTo(T, 6);
  });

  test('leaves everything as it was at time zero', () => {
    for (const [i, T] of restAfter(0).entries()) expect(T).toBeCloseTo(start_K[i] ?? 0, 9);
  });

  test('comes to rest where every node is in balance', () => {
    for (const rate of slope(restAfter(1e6))) expect(Math.abs(rate)).toBeLessThan(1e-8);
  });

  test('two spells in turn are one long spell, in the same array too', () => {
    const T_K = start_K.slice();
    respond(modes, T_K, power_W, fixed_K, 3, T_K);
    respond(modes, T_K, power_W, fixed_K, 4, T_K);
    for (const [i, T] of restAfter(7).entries()) expect(T_K[i]).toBeCloseTo(T, 9);
  });

  test('a network without any way out keeps all its heat', () => {
    const closed = prepareTransient({ ...network, toFixed_WPerK: new Float64Array(4) });
    const T_K = respond(closed, start_K, power_W, fixed_K, 100, new Float64Array(4));
    const stored_J = T_K.reduce(
      (sum, T, i) => sum + (T - (start_K[i] ?? 0)) * (network.capacity_JPerK[i] ?? 0),
      0,
    );
    expect(stored_J).toBeCloseTo(3 * 100, 6);
  });
});
