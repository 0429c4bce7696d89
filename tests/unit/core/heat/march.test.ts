import { describe, expect, test } from 'vitest';
import { createMarch, type March, marchStep, stored_J } from '../../../../src/core/heat/march.ts';
import { createHeatNetwork, solveHeatNetwork } from '../../../../src/core/heat/network.ts';
import { prepareTransient, respond } from '../../../../src/core/heat/transient.ts';

/** Four bodies in a row from 2 ms to 200 s, 3 W into the first. */
function ladder(step_s = 1e-3, capacity = [0.002, 0.04, 3, 60]): March {
  const network = createHeatNetwork(4, [0, 1, 2, 3], [1, 2, 3, -1]);
  network.G_WPerK.set([0.9, 0.2, 4, 0.3]);
  network.power_W[0] = 3;
  return createMarch(network, Float64Array.from(capacity), step_s);
}

/** One body that gives off G·T, its conductance set anew from its own temperature where `law` says so. */
function body(
  law?: (rise_K: number) => number,
  step_s = 1e-3,
): { march: March; refresh: (r: Float64Array) => void } {
  const network = createHeatNetwork(1, [0], [-1]);
  network.G_WPerK[0] = law ? law(0) : 0.1;
  network.power_W[0] = 3;
  const refresh = (rise_K: Float64Array) => {
    if (law) network.G_WPerK[0] = law(rise_K[0] as number);
  };
  return { march: createMarch(network, Float64Array.of(10), step_s), refresh };
}

/** Steps of one length, whatever their error. */
function evenly(
  march: March,
  end_s: number,
  steps: number,
  refresh?: (rise_K: Float64Array) => void,
): number {
  for (let i = 1; i <= steps; i++) {
    march.step_s = end_s / steps;
    expect(marchStep(march, (end_s * i) / steps, Number.MAX_VALUE, refresh)).toBe(true);
  }
  return march.rise_K[0] as number;
}

describe('marchStep', () => {
  test('is of second order: half the step is a quarter of the error', () => {
    const exact = 30 * (1 - Math.exp(-1.5));
    const error = (steps: number) => Math.abs(evenly(body().march, 150, steps) - exact);
    for (const steps of [32, 64, 128]) expect(error(steps) / error(2 * steps)).toBeCloseTo(4, 0);
    expect(error(256)).toBeLessThan(1e-3);
  });

  test('is so too where the conductance follows the temperature', () => {
    // 10·dT/dt = 3 − (0.05 + 0.002·T)·T, by partial fractions: roots r of 0.002·T² + 0.05·T − 3.
    const law = (rise_K: number) => 0.05 + 0.002 * rise_K;
    const root = Math.sqrt(0.05 ** 2 + 4 * 0.002 * 3);
    const [high, low] = [(-0.05 + root) / 0.004, (-0.05 - root) / 0.004];
    const decay = (high / low) * Math.exp((-root * 80) / 10);
    const exact = (high - low * decay) / (1 - decay);
    const error = (steps: number) => {
      const { march, refresh } = body(law);
      return Math.abs(evenly(march, 80, steps, refresh) - exact);
    };
    // Conductances lag by half a step: first order, but small.
    expect(error(64) / error(128)).toBeGreaterThan(1.9);
    expect(error(1024)).toBeLessThan(0.02);
  });

  test('keeps its books: joules put in are joules left and joules stored, at any tolerance and with any refresh', () => {
    for (const tolerance_K of [1e-3, 0.1, 5]) {
      const march = ladder();
      const { network } = march;
      const refresh = (rise_K: Float64Array) => {
        network.G_WPerK[3] = 0.3 + 0.01 * (rise_K[3] as number);
        network.power_W[0] = 3 - 0.01 * (rise_K[0] as number);
        network.power_W[2] = 0.001 * (rise_K[1] as number);
      };
      while (march.time_s < 500) expect(marchStep(march, 500, tolerance_K, refresh)).toBe(true);
      expect(Math.abs(march.put_J - march.left_J - stored_J(march))).toBeLessThan(1e-12 * march.put_J);
    }
  });

  test('counts joules from what was there at the start', () => {
    const march = ladder();
    march.rise_K.fill(50);
    march.network.power_W[0] = 0;
    const before_J = stored_J(march);
    expect(before_J).toBeCloseTo(50 * 63.042, 9);
    while (march.time_s < 100) marchStep(march, 100, 0.05);
    expect(march.put_J).toBe(0);
    expect(march.left_J).toBeGreaterThan(0);
    expect(Math.abs(before_J - march.left_J - stored_J(march))).toBeLessThan(1e-12 * before_J);
  });

  test('never goes beyond its end, and a step cut short does not shorten the next', () => {
    const march = ladder(4);
    marchStep(march, 0.5, Number.MAX_VALUE);
    expect(march.time_s).toBe(0.5);
    expect(march.step_s).toBe(4);
    while (march.time_s < 7) marchStep(march, 7, 0.05);
    expect(march.time_s).toBeCloseTo(7, 12);
  });

  test('comes to rest where the steady network does, in ever longer steps, without swinging about it', () => {
    const march = ladder();
    const last = [0, 0, 0, 0];
    let steps = 0;
    while (march.time_s < 3e4) {
      marchStep(march, 3e4, 0.05);
      steps++;
      march.rise_K.forEach((rise, i) => {
        expect(rise).toBeGreaterThan((last[i] as number) - 0.05);
        last[i] = rise;
      });
    }
    expect(steps).toBeLessThan(600);
    solveHeatNetwork(march.network);
    march.rise_K.forEach((rise, i) => {
      expect(Math.abs(rise - (march.network.rise_K[i] as number))).toBeLessThan(1e-3);
    });
  });

  test('a finer tolerance is a smaller error, for more steps, against the exact answer of a linear network', () => {
    const modes = prepareTransient({
      n: 4,
      capacity_JPerK: Float64Array.of(0.002, 0.04, 3, 60),
      // biome-format: a matrix
      conductance_WPerK: Float64Array.of(0, 0.9, 0, 0, 0.9, 0, 0.2, 0, 0, 0.2, 0, 4, 0, 0, 4, 0),
      toFixed_WPerK: Float64Array.of(0, 0, 0, 0.3),
    });
    const none = new Float64Array(4);
    const run = (tolerance_K: number) => {
      const march = ladder();
      let [worst_K, steps] = [0, 0];
      for (const time_s of [0.003, 0.03, 0.3, 3, 30, 300]) {
        while (march.time_s < time_s) {
          marchStep(march, time_s, tolerance_K);
          steps++;
        }
        const exact = respond(modes, none, march.network.power_W, none, time_s, new Float64Array(4));
        march.rise_K.forEach((rise, i) => {
          worst_K = Math.max(worst_K, Math.abs(rise - (exact[i] as number)));
        });
      }
      return { worst_K, steps };
    };
    let before = { worst_K: Number.POSITIVE_INFINITY, steps: 0 };
    for (const tolerance_K of [0.3, 0.03, 0.003, 0.0003]) {
      const now = run(tolerance_K);
      expect(now.worst_K).toBeLessThan(before.worst_K / 2);
      expect(now.worst_K).toBeLessThan(tolerance_K);
      expect(now.steps).toBeGreaterThan(before.steps);
      before = now;
    }
  });

  test('takes a node that holds nothing as one that follows at once', () => {
    const march = ladder(1e-3, [0, 0.04, 3, 60]);
    while (march.time_s < 5) expect(marchStep(march, 5, 0.01)).toBe(true);
    expect((march.rise_K[0] as number) - (march.rise_K[1] as number)).toBeCloseTo(3 / 0.9, 9);
  });

  test('says so where a node has neither capacity nor a way out', () => {
    const network = createHeatNetwork(2, [0], [-1]);
    network.G_WPerK[0] = 1;
    expect(marchStep(createMarch(network, Float64Array.of(1, 0), 0.1), 1, 0.1)).toBe(false);
  });
});
