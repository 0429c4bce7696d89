import { describe, expect, test } from 'vitest';
import { createMarch, marchStep, stored_J } from '../../../src/core/heat/march.ts';
import { createHeatNetwork } from '../../../src/core/heat/network.ts';
import { published } from '../../helpers/published.ts';

/** Source → R₁ → R₂ → fixed temperature, with a capacity behind each resistance. */
function chain(power_W: number, R1: number, C1: number, R2: number, C2: number) {
  const network = createHeatNetwork(2, [0, 1], [1, -1]);
  network.G_WPerK.set([1 / R1, 1 / R2]);
  network.power_W[0] = power_W;
  return createMarch(network, Float64Array.of(C1, C2), 1e-3);
}

describe('two bodies in a row, 5 W', () => {
  const exact = published({
    source: 'ownComputation',
    where: 'exact solution by eigenvalues, Python library scipy 1.10.1',
    kind: 'computed elsewhere',
    methods: ['heatMarch'],
  });
  test.each([
    [2.5, 15.8351, 0.11371],
    [10, 25.1781, 0.90382],
    [60, 30.4584, 5.6547],
    [120, 34.1762, 9.296],
    [300, 38.6757, 13.703],
  ])('after %f s stand at %f and %f K', (time_s, first, second) => {
    const march = chain(5, 5, 0.5, 3, 40);
    while (march.time_s < time_s) marchStep(march, time_s, 0.01);
    exact.says('temperature rise of the first [K]', march.rise_K[0] as number, String(first), {
      within: 2e-4,
      because: 'steps held to 10 mK',
    });
    exact.says('temperature rise of the second [K]', march.rise_K[1] as number, String(second), {
      within: 3e-3,
      because: 'the second body has hardly moved at first',
    });
    expect(march.put_J).toBeCloseTo(5 * time_s, 9);
    expect(Math.abs(march.put_J - march.left_J - stored_J(march))).toBeLessThan(1e-10 * march.put_J);
  });
});

describe('one body under pulses, 10 W at 8 K/W, time constant 25 s, on 10 of 40 s', () => {
  const pieces = published({
    source: 'ownComputation',
    where: 'two exponential pieces that join, worked by hand',
    kind: 'computed elsewhere',
    methods: ['heatMarch'],
  });
  test('settles between the published peak and valley', () => {
    const network = createHeatNetwork(1, [0], [-1]);
    network.G_WPerK[0] = 1 / 8;
    const march = createMarch(network, Float64Array.of(25 / 8), 0.01);
    let peak = 0;
    let valley = 0;
    for (let cycle = 1; cycle <= 12; cycle++) {
      for (const [power, length_s] of [
        [10, 10],
        [0, 30],
      ] as const) {
        network.power_W[0] = power;
        march.step_s = 0.01;
        march.time_s = 0;
        while (march.time_s < length_s) marchStep(march, length_s, 0.01);
        if (power > 0) peak = march.rise_K[0] as number;
        else valley = march.rise_K[0] as number;
      }
    }
    const steps = { off: 0.005, because: 'steps held to 10 mK' };
    pieces.says('peak [K]', peak, '33.0463', steps);
    pieces.says('valley [K]', valley, '9.9534', steps);
  });
});

describe('a layer of alumina under 1 W/mm²', () => {
  const carslaw = published({
    source: 'carslawJaeger1959',
    where: 'semi-infinite solid under constant flux, worked by hand',
    kind: 'from memory',
    methods: ['heatMarch'],
  });
  test('cut into layers that thicken by 1.6 warms by the published 3.7068 K in a millisecond', () => {
    const layers = 12;
    const thick_m = 2e-3;
    const thinnest = (0.6 * thick_m) / (1.6 ** layers - 1);
    const nodes = Array.from({ length: layers }, (_, i) => i);
    const network = createHeatNetwork(layers + 1, [...nodes, layers], [...nodes.map((i) => i + 1), -1]);
    const capacity = new Float64Array(layers + 1);
    nodes.forEach((i) => {
      const dz = thinnest * 1.6 ** i;
      network.G_WPerK[i] = 27 / dz;
      for (const node of [i, i + 1]) capacity[node] = (capacity[node] as number) + (3900 * 880 * dz) / 2;
    });
    network.G_WPerK[layers] = 1e-6;
    network.power_W[0] = 1e6;
    const march = createMarch(network, capacity, 1e-7);
    while (march.time_s < 1e-3) marchStep(march, 1e-3, 0.005);
    carslaw.says('temperature rise [K]', march.rise_K[0] as number, '3.7068', {
      within: 0.02,
      because: 'layers grow coarse deep down',
    });
  });
});
