import { describe, expect, test } from 'vitest';
import { prepareFanCurve } from '../../../src/core/fan/fanCurve.ts';
import { fanHeatRise_K } from '../../../src/core/fan/fanHeatRise_K.ts';
import { airPower_W, fanEfficiency, scaleFanDuty } from '../../../src/core/fan/fanLaws.ts';
import { fanPressure } from '../../../src/core/fan/fanPressure.ts';
import { published } from '../../helpers/published.ts';

const scipy = published({
  source: 'ownComputation',
  where: 'Python library scipy 1.10.1, PchipInterpolator, after Fritsch & Carlson 1980',
  kind: 'computed elsewhere',
});
const hand = (source: 'douglasFluids' | 'incropera', methods: string[]) =>
  published({ source, where: 'worked by hand', kind: 'worked again', methods });
const laws = hand('douglasFluids', ['fanLaws']);

// Invented fan A: 0 … 40 m³/h, 45 … 0 Pa.
const fan = prepareFanCurve(
  [45, 38, 31, 24, 14, 0].map((dp_Pa, i) => ({ flow_m3PerS: (8 * i) / 3600, dp_Pa })),
);

function pressure_Pa(flow_m3PerH: number, speedRatio = 1): number {
  const out = new Float64Array(2);
  fanPressure(fan, flow_m3PerH / 3600, speedRatio, 1.2, out);
  return out[0] as number;
}

describe('fan A between its points (scipy)', () => {
  test.each([
    [12, '34.5'],
    [20, '27.6544'],
    [28, '19.4289'],
    [36, '7.5417'],
  ])('has at %d m³/h %s Pa', (flow, printed) => {
    scipy.says('pressure [Pa]', pressure_Pa(flow), printed);
  });

  test('has the slopes −0.875, −0.875, −0.875, −1.02941, −1.45833 and −2.0 Pa/(m³/h) at its points', () => {
    const printed = ['-0.875', '-0.875', '-0.875', '-1.02941', '-1.45833', '-2.0'];
    expect(fan.curve.slope).toHaveLength(printed.length);
    printed.forEach((slope, i) => {
      const found = (fan.curve.slope[i] as number) / 3600;
      scipy.says(`slope at its point ${i + 1} [Pa/(m³/h)]`, found, slope);
    });
  });
});

describe('fan A at 10 V instead of 12 V (fan laws, worked by hand)', () => {
  const duty = scaleFanDuty(
    { flow_m3PerS: 20 / 3600, dp_Pa: 27.6544, power_W: 2.4 },
    { speed: 10 / 12, size: 1, density: 1 },
  );

  test('moves 0.8333 of the air', () =>
    laws.says('flow over flow', duty.flow_m3PerS / (20 / 3600), '0.8333'));
  test('has 19.2044 Pa, by the duty and by the curve', () => {
    laws.says('pressure by the duty [Pa]', duty.dp_Pa, '19.2044');
    laws.says('pressure by the curve [Pa]', pressure_Pa(20 * (10 / 12), 10 / 12), '19.2044', {
      within: 5e-6,
      because: 'it was worked from 27.6544 Pa, rounded to four decimals',
    });
  });
  test('takes 1.3889 W', () => laws.says('power [W]', duty.power_W, '1.3889'));
});

describe('a fan of 2.4 W at 20 m³/h (worked by hand)', () => {
  test('warms air of 1.184 kg/m³ by 0.3627 K', () => {
    // The heat capacity is given as 1006 J/(kg·K).
    const rise_K = fanHeatRise_K(2.4, 20 / 3600, 1.184, 1006);
    hand('incropera', ['fanHeat']).says('temperature rise [K]', rise_K, '0.3627');
  });
  test('gives 0.15364 W to the air, 6.40 %', () => {
    laws.says('power of the air [W]', airPower_W(20 / 3600, 27.6544), '0.15364');
    laws.says('efficiency [%]', 100 * fanEfficiency(20 / 3600, 27.6544, 2.4), '6.40');
  });
});
