import { describe, expect, test } from 'vitest';
import { type LinkLaw, linkDrop } from '../../../../src/core/airflow/linkLaw.ts';
import { prepareFanCurve } from '../../../../src/core/fan/fanCurve.ts';
import { preparePchip } from '../../../../src/core/solve/pchip.ts';

const rho = 1.15;
const mu = 1.85e-5;

function drop(law: LinkLaw, massFlow: number): readonly [dp: number, slope: number] {
  const out = new Float64Array(2);
  linkDrop(out, law, massFlow, rho, mu);
  return [out[0] as number, out[1] as number];
}

const laws: Record<Exclude<LinkLaw['kind'], 'fan'>, LinkLaw> = {
  loss: { kind: 'loss', loss: 2, area_m2: 1e-3, size_m: 0.03 },
  channels: {
    kind: 'channels',
    count: 8,
    gap_m: 2e-3,
    height_m: 10e-3,
    length_m: 25e-3,
    loss: 1.4,
    frictionFactor: 1,
  },
  twoTerm: { kind: 'twoTerm', linear_PaSPerM: 3, quadratic_PaS2PerM2: 0.8, area_m2: 1e-3 },
  points: { kind: 'points', curve: preparePchip([0, 2e-3, 5e-3], [0, 4, 20]) },
};
const fan: LinkLaw = {
  kind: 'fan',
  curve: prepareFanCurve([
    { flow_m3PerS: 0, dp_Pa: 45 },
    { flow_m3PerS: 0.006, dp_Pa: 30 },
    { flow_m3PerS: 0.011, dp_Pa: 0 },
  ]),
  speedRatio: 0.8,
  flowFactor: 1.1,
};

describe.each(Object.entries(laws))('a link of %s', (_, law) => {
  test('drops as much backwards as forwards, and nothing at rest', () => {
    for (const q of [1e-8, 1e-5, 1e-3, 1e-2]) expect(drop(law, -q)[0]).toBe(-drop(law, q)[0]);
    expect(Math.abs(drop(law, 0)[0])).toBe(0);
  });

  test('drops more for more flow', () => {
    let before = -1;
    for (const q of [0, 1e-8, 1e-6, 1e-4, 1e-3, 3e-3, 1e-2]) {
      expect(drop(law, q)[0]).toBeGreaterThan(before);
      before = drop(law, q)[0];
    }
  });
});

describe.each(Object.entries({ ...laws, fan }))('a link of %s', (_, law) => {
  test.each([1e-6, 1e-3, 3e-3, 8e-3])('has the slope it tells at %f kg/s', (q) => {
    const step = 1e-9 + 1e-7 * q;
    const measured = (drop(law, q + step)[0] - drop(law, q - step)[0]) / (2 * step);
    expect(Math.abs(drop(law, q)[1] / measured - 1)).toBeLessThan(1e-5);
  });
});

describe('single laws', () => {
  test('a loss is velocity heads on its own area', () => {
    const v = 3e-3 / (rho * 1e-3);
    expect(Math.abs(drop(laws.loss, 3e-3)[0] / (0.5 * rho * v * v * 2) - 1)).toBeLessThan(1e-6); // Reynolds number 4900
  });

  test('a filter has its maker’s two terms', () => {
    const v = 2e-3 / (rho * 1e-3);
    expect(drop(laws.twoTerm, 2e-3)[0]).toBeCloseTo(3 * v + 0.8 * v * v, 12);
  });

  test('measured points stand at their volume flow', () => {
    expect(drop(laws.points, 2e-3 * rho)[0]).toBeCloseTo(4, 12);
    expect(drop(laws.points, -5e-3 * rho)[0]).toBeCloseTo(-20, 12);
  });

  test('a fan is a negative drop, scaled by density, speed and its factor of flow', () => {
    expect(drop(fan, 0.006 * 0.8 * 1.1 * rho)[0]).toBeCloseTo(-30 * (rho / 1.2) * 0.64, 12);
  });
});
