import { describe, test } from 'vitest';
import { airPower_W, scaleFanDuty } from '../../../src/core/fan/fanLaws.ts';
import { expectPublished } from '../../helpers/published.ts';

describe('Çengel & Cimbala, Fluid Mechanics, ex. 5-14: fan of a computer case, 12 × 40 × 40 cm, half void', () => {
  const flow_m3PerS = 0.5 * 0.12 * 0.4 * 0.4;
  const velocity_mPerS = flow_m3PerS / ((Math.PI / 4) * 0.05 ** 2);
  const dp_Pa = (1.1 * 1.2 * velocity_mPerS ** 2) / 2;

  test('the kinetic energy of one change a second through 5 cm is 15.8 Pa', () =>
    expectPublished(dp_Pa, '15.8'));
  test('at 30 % it takes 0.505 W', () => expectPublished(airPower_W(flow_m3PerS, dp_Pa) / 0.3, '0.505'));
});

describe('Douglas, Fluid Mechanics, ex. 9.6: the same fan in denser air at a speed that leaves the power per density', () => {
  const speed = 0.92 / 1.3;
  const duty = scaleFanDuty(
    { flow_m3PerS: 2, dp_Pa: 200, power_W: 1 },
    { speed, size: 1, density: 1.3 / 0.92 },
  );

  test('1400 become 990.8 1/min', () => expectPublished(1400 * speed, '990.8'));
  test('2 become 1.415 m³/s', () => expectPublished(duty.flow_m3PerS, '1.415'));
  test('200 become 141.5 Pa', () => expectPublished(duty.dp_Pa, '141.5'));
});

// The laws are ratios: feet, inches of water and horsepower go in and come out.
describe('Abulencia & Theodore, Fluid Flow for the Practicing Chemical Engineer', () => {
  const faster = scaleFanDuty(
    { flow_m3PerS: 12200, dp_Pa: 5, power_W: 9.25 },
    { speed: 2100 / 1694, size: 1, density: 1 },
  );

  test('ex. 17.2: 12200 ft³/min at 1694 1/min become 15124 at 2100', () =>
    expectPublished(faster.flow_m3PerS, '15124'));
  test('ex. 17.2: 5 in of water become 7.68', () => expectPublished(faster.dp_Pa, '7.68'));
  test('ex. 17.2: 9.25 hp become 17.62', () => expectPublished(faster.power_W, '17.62'));
  test('ex. 17.1: 47.5 hp of a 46 in fan at 1575 1/min become 33.10 of a 42 in one at 1625', () => {
    const other = { speed: 1625 / 1575, size: 42 / 46, density: 1 };
    expectPublished(scaleFanDuty({ flow_m3PerS: 1, dp_Pa: 1, power_W: 47.5 }, other).power_W, '33.10');
  });
});
