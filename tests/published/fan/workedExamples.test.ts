import { describe, test } from 'vitest';
import { airPower_W, scaleFanDuty } from '../../../src/core/fan/fanLaws.ts';
import { published } from '../../helpers/published.ts';

const example = (source: string, where: string) =>
  published({ source, where, kind: 'worked example', methods: ['fanLaws'] });

describe('Çengel & Cimbala, Fluid Mechanics, ex. 5-14: fan of a computer case, 12 × 40 × 40 cm, half void', () => {
  const cengel = example('Çengel & Cimbala, Fluid Mechanics; public textbook companion', 'ex. 5-14');
  const flow_m3PerS = 0.5 * 0.12 * 0.4 * 0.4;
  const velocity_mPerS = flow_m3PerS / ((Math.PI / 4) * 0.05 ** 2);
  const dp_Pa = (1.1 * 1.2 * velocity_mPerS ** 2) / 2;

  test('the kinetic energy of one change a second through 5 cm is 15.8 Pa', () =>
    cengel.says('kinetic energy of the stream [Pa]', dp_Pa, '15.8'));
  test('at 30 % it takes 0.505 W', () =>
    cengel.says('power of the fan [W]', airPower_W(flow_m3PerS, dp_Pa) / 0.3, '0.505'));
});

describe('Douglas, Fluid Mechanics, ex. 9.6: the same fan in denser air at a speed that leaves the power per density', () => {
  const douglas = example('douglasFluids', 'ex. 9.6');
  const speed = 0.92 / 1.3;
  const duty = scaleFanDuty(
    { flow_m3PerS: 2, dp_Pa: 200, power_W: 1 },
    { speed, size: 1, density: 1.3 / 0.92 },
  );

  test('1400 become 990.8 1/min', () => douglas.says('speed [1/min]', 1400 * speed, '990.8'));
  test('2 become 1.415 m³/s', () => douglas.says('flow [m³/s]', duty.flow_m3PerS, '1.415'));
  test('200 become 141.5 Pa', () => douglas.says('pressure [Pa]', duty.dp_Pa, '141.5'));
});

// The laws are ratios: feet, inches of water and horsepower go in and come out.
describe('Abulencia & Theodore, Fluid Flow for the Practicing Chemical Engineer', () => {
  const abulencia = example(
    'Abulencia & Theodore, Fluid Flow for the Practicing Chemical Engineer; public textbook companion',
    'ex. 17.1 and 17.2',
  );
  const faster = scaleFanDuty(
    { flow_m3PerS: 12200, dp_Pa: 5, power_W: 9.25 },
    { speed: 2100 / 1694, size: 1, density: 1 },
  );

  test('ex. 17.2: 12200 ft³/min at 1694 1/min become 15124 at 2100', () =>
    abulencia.says('flow [ft³/min]', faster.flow_m3PerS, '15124'));
  test('ex. 17.2: 5 in of water become 7.68', () => abulencia.says('pressure [inH₂O]', faster.dp_Pa, '7.68'));
  test('ex. 17.2: 9.25 hp become 17.62', () => abulencia.says('power [hp]', faster.power_W, '17.62'));
  test('ex. 17.1: 47.5 hp of a 46 in fan at 1575 1/min become 33.10 of a 42 in one at 1625', () => {
    const other = { speed: 1625 / 1575, size: 42 / 46, density: 1 };
    const { power_W } = scaleFanDuty({ flow_m3PerS: 1, dp_Pa: 1, power_W: 47.5 }, other);
    abulencia.says('power [hp]', power_W, '33.10');
  });
});
