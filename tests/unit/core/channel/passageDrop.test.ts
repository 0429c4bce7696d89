import { describe, expect, test } from 'vitest';
import { frictionDevelopedSeries } from '../../../../src/core/channel/frictionDevelopedSeries.ts';
import { passageDrop } from '../../../../src/core/channel/passageDrop.ts';

const rho = 1.1839;
const mu = 1.8372e-5;
const out = new Float64Array(2);
function drop(v: number, loss = 0, length_m = 0.05, friction = 1) {
  passageDrop(out, v, rho, mu, 3.9e-3, 20e-3, length_m, loss, friction);
  return { dp_Pa: out[0] as number, slope: out[1] as number };
}
const hydraulic_m = (2 * 3.9 * 20) / 23.9 / 1000;
const velocityAt = (reynolds: number) => (reynolds * mu) / (rho * hydraulic_m);

describe('passageDrop', () => {
  test('no flow costs nothing, and the slope there is that of creeping flow: 2μL·fRe/D_h²', () => {
    const { dp_Pa, slope } = drop(0);
    const creeping = (2 * mu * 0.05 * frictionDevelopedSeries(0.195)) / hydraulic_m ** 2;
    expect(dp_Pa).toBe(0);
    expect(Math.abs(slope / creeping - 1)).toBeLessThan(1e-3); // the fit of f·Re is within 0.06 % of the series
  });

  test('the derivative is that of the drop, in every regime', () => {
    for (const reynolds of [1e-3, 1, 50, 800, 2200, 2400, 3900, 4100, 2e4]) {
      for (const loss of [0, 1.4]) {
        for (const length_m of [0.05, 2]) {
          const v = velocityAt(reynolds);
          const dv = 1e-5 * v;
          const numeric =
            (drop(v + dv, loss, length_m).dp_Pa - drop(v - dv, loss, length_m).dp_Pa) / (2 * dv);
          expect(Math.abs(drop(v, loss, length_m).slope / numeric - 1)).toBeLessThan(1e-6);
        }
      }
    }
  });

  test('the friction factor scales friction and leaves the ends alone', () => {
    const ends = drop(2, 1.4).dp_Pa - drop(2, 0).dp_Pa;
    expect(drop(2, 1.4, 0.05, 1.5).dp_Pa).toBeCloseTo(1.5 * drop(2).dp_Pa + ends, 10);
  });

  test('the ends cost K velocity heads', () => {
    const heads = (drop(2, 1.4).dp_Pa - drop(2, 0).dp_Pa) / (0.5 * rho * 4);
    expect(heads).toBeCloseTo(1.4, 5);
  });

  test('gap and height may be given either way round', () => {
    const { dp_Pa } = drop(2, 1.4);
    passageDrop(out, 2, rho, mu, 20e-3, 3.9e-3, 0.05, 1.4, 1);
    expect(out[0]).toBe(dp_Pa);
  });
});
