import { describe, test } from 'vitest';
import { airPower_W, fanEfficiency, fanRise_K, scaleFanDuty } from '../../../src/core/fan/fanLaws.ts';
import { expectPublished } from '../../helpers/published.ts';

// Douglas, Fluid Mechanics, ex. 9.6, through a public textbook companion: same fan, denser air, equal power per speed.
describe('Douglas ex. 9.6, a fan in denser air', () => {
  const density = 1.3 / 0.92;
  const rpm = 1400 / density;
  const duty = scaleFanDuty(
    { flow_m3PerS: 2, dp_Pa: 200, power_W: 0 },
    { speed: rpm / 1400, size: 1, density },
  );

  test('turns at 990.8 1/min', () => expectPublished(rpm, '990.8'));
  test('moves 1.415 m³/s', () => expectPublished(duty.flow_m3PerS, '1.415'));
  test('at 141.5 Pa', () => expectPublished(duty.dp_Pa, '141.5'));
});

// Abulencia & Theodore, Fluid Flow for the Practicing Chemical Engineer, through a public textbook companion. The laws are
// the same in any units: here ft³/min, inches of water and horsepower.
describe('Abulencia & Theodore ex. 17.2, 1694 to 2100 1/min', () => {
  const duty = scaleFanDuty(
    { flow_m3PerS: 12200, dp_Pa: 5, power_W: 9.25 },
    { speed: 2100 / 1694, size: 1, density: 1 },
  );

  test('15 124 ft³/min', () => expectPublished(duty.flow_m3PerS, '15124'));
  test('7.68 inches of water', () => expectPublished(duty.dp_Pa, '7.68'));
  test('17.62 horsepower', () => expectPublished(duty.power_W, '17.62'));
});

test('Abulencia & Theodore ex. 17.1: 46 to 42 inches, 1575 to 1625 1/min, 47.5 to 33.10 horsepower', () => {
  const { power_W } = scaleFanDuty(
    { flow_m3PerS: 0, dp_Pa: 0, power_W: 47.5 },
    { speed: 1625 / 1575, size: 42 / 46, density: 1 },
  );
  expectPublished(power_W, '33.10');
});

// Çengel & Cimbala, Fluid Mechanics, ex. 5-14, through a public textbook companion: a case of 12 × 40 × 40 cm, half of it
// void, one change of air a second through an opening of 5 cm; kinetic energy factor 1.1, fan and motor 30 %, ρ 1.2.
describe('Çengel & Cimbala ex. 5-14, case fan', () => {
  const flow_m3PerS = (0.5 * 0.12 * 0.4 * 0.4) / 1;
  const velocity_mPerS = flow_m3PerS / ((Math.PI / 4) * 0.05 ** 2);
  const dp_Pa = (1.1 * 1.2 * velocity_mPerS ** 2) / 2;

  test('raises the pressure by 15.8 Pa', () => expectPublished(dp_Pa, '15.8'));
  test('takes 0.505 W', () => expectPublished(airPower_W(flow_m3PerS, dp_Pa) / 0.3, '0.505'));
  test('and those 0.505 W make it 30 % efficient', () =>
    expectPublished(fanEfficiency(flow_m3PerS, dp_Pa, 0.505), '0.30'));
});

// Independent computation: fan A of the curve checks at 20 m³/h, 2.4 W, air of 1.184 kg/m³ and 1006 J/(kg·K).
describe('a small fan at 20 m³/h with 2.4 W', () => {
  const flow_m3PerS = 20 / 3600;

  test('warms its air by 0.3627 K', () =>
    expectPublished(fanRise_K(2.4, flow_m3PerS, 1.184, 1006), '0.3627'));
  test('puts 0.15364 W into the air', () => expectPublished(airPower_W(flow_m3PerS, 27.6544), '0.15364'));
  test('is 6.40 % efficient', () => expectPublished(100 * fanEfficiency(flow_m3PerS, 27.6544, 2.4), '6.40'));

  test('at 10 of 12 V takes 1.3889 W', () => {
    const slower = scaleFanDuty(
      { flow_m3PerS, dp_Pa: 27.6544, power_W: 2.4 },
      { speed: 10 / 12, size: 1, density: 1 },
    );
    expectPublished(slower.power_W, '1.3889');
    expectPublished(slower.flow_m3PerS / flow_m3PerS, '0.8333');
    expectPublished(slower.dp_Pa, '19.2044');
  });
});
