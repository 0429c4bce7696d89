import { defineCard } from '../card.ts';
import { evaluatePchip } from '../solve/pchip.ts';
import { curveDensity_kgPerM3, type FanCurve } from './fanCurve.ts';

/**
 * Static pressure of a fan at a flow, speed and air density, and its derivative by flow, to `out[0]` and `out[1]`.
 * The curve's flow scales with speed, its pressure with density and the square of speed; beyond its ends it goes straight on.
 * @param speedRatio speed over rated speed, above zero
 */
export function fanPressure(
  fan: FanCurve,
  flow_m3PerS: number,
  speedRatio: number,
  rho_kgPerM3: number,
  out: Float64Array,
): void {
  evaluatePchip(fan.curve, flow_m3PerS / speedRatio, out);
  const dense = rho_kgPerM3 / curveDensity_kgPerM3;
  out[0] = (out[0] as number) * dense * speedRatio * speedRatio;
  out[1] = (out[1] as number) * dense * speedRatio;
}

export const card = defineCard({
  id: 'fanLaws',
  title: 'A fan at another speed and density',
  equation: 'p = (ρ/1.2)·n²·p_0; p_0 read at Q/n; n is speed over rated speed',
  result: { name: 'pressure', unit: 'Pa', symbol: 'p' },
  symbols: { p0_Pa: 'p_0', speedRatio: 'n', rho_kgPerM3: 'ρ' },
  source: { key: 'douglasFluids', where: 'similarity of fans, ex. 9.6' },
  range: { speedRatio: [0.5, 1.2] },
  rangeFrom: 'common practice',
  scatter: { sigma: 0.05, from: 'memory' },
  assumes: ['fanLaws', 'speedFollowsVoltage'],
  example: {
    given: { p0_Pa: 27.6544, speedRatio: 10 / 12, rho_kgPerM3: 1.2 },
    printed: '19.2044',
    kind: 'worked again',
    where: 'fan A of the published checks at 10 V instead of 12 V, computed',
    because: 'the pressure put in has four decimals',
    within: 1e-5,
  },
  evaluate: ({ p0_Pa, speedRatio, rho_kgPerM3 }) =>
    (p0_Pa * rho_kgPerM3 * speedRatio * speedRatio) / curveDensity_kgPerM3,
});
