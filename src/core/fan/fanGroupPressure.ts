import { defineCard } from '../card.ts';
import { curveDensity_kgPerM3, type FanCurve, prepareFanCurve } from './fanCurve.ts';
import { fanPressure } from './fanPressure.ts';

/**
 * Static pressure of equal fans together and its derivative by their common flow, to `out[0]` and `out[1]`: side by side they
 * share the flow at one pressure, behind one another they add their pressures at one flow. Ideal: a fan close behind another
 * works in its swirl and adds less.
 */
export function fanGroupPressure(
  fan: FanCurve,
  group: { readonly sideBySide: number; readonly inARow: number },
  flow_m3PerS: number,
  speedRatio: number,
  rho_kgPerM3: number,
  out: Float64Array,
): void {
  fanPressure(fan, flow_m3PerS / group.sideBySide, speedRatio, rho_kgPerM3, out);
  out[0] = (out[0] as number) * group.inARow;
  out[1] = ((out[1] as number) * group.inARow) / group.sideBySide;
}

export const card = defineCard({
  id: 'fanGroup',
  title: 'Equal fans side by side and in a row',
  equation: 'p(Q) = m·p₁(Q/n), n side by side, m in a row',
  result: { name: 'pressure', unit: 'Pa' },
  source: { key: 'commonPractice', where: 'flows add at one pressure, pressures at one flow' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.1, from: 'common practice' },
  assumes: ['fanLaws'],
  example: {
    given: { shutOff_Pa: 40, freeFlow_m3PerS: 0.01, sideBySide: 2, inARow: 3, flow_m3PerS: 0.005 },
    printed: '90',
    where: 'worked by hand on a straight curve: each at a quarter of its free delivery, 30 Pa, three times',
  },
  evaluate: ({ shutOff_Pa, freeFlow_m3PerS, sideBySide, inARow, flow_m3PerS }) => {
    const straight = prepareFanCurve([
      { flow_m3PerS: 0, dp_Pa: shutOff_Pa },
      { flow_m3PerS: freeFlow_m3PerS, dp_Pa: 0 },
    ]);
    const out = new Float64Array(2);
    fanGroupPressure(straight, { sideBySide, inARow }, flow_m3PerS, 1, curveDensity_kgPerM3, out);
    return out[0] as number;
  },
});
