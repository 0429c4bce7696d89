import { describe, test } from 'vitest';
import { nusseltHorizontalDown } from '../../../src/core/freeConvection/nusseltHorizontalDown.ts';
import { nusseltHorizontalUpLaminar } from '../../../src/core/freeConvection/nusseltHorizontalUpLaminar.ts';
import { nusseltHorizontalUpTurbulent } from '../../../src/core/freeConvection/nusseltHorizontalUpTurbulent.ts';
import { nusseltVerticalPlateChurchillChu1975 } from '../../../src/core/freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { nusseltVerticalPlateLaminarChurchillChu1975 } from '../../../src/core/freeConvection/nusseltVerticalPlateLaminarChurchillChu1975.ts';
import { buoyancy_PerM3K, rayleigh } from '../../../src/core/freeConvection/rayleigh.ts';
import { radiationFlux_WPerM2 } from '../../../src/core/radiation/radiationFlux_WPerM2.ts';
import { published } from '../../helpers/published.ts';

describe('Churchill & Chu 1975, vertical plate', () => {
  const again = published({
    source: 'churchillChu1975',
    where: 'the published forms at Pr 0.71 in a separate program',
    kind: 'worked again',
    methods: ['nusseltVerticalPlateChurchillChu1975', 'nusseltVerticalPlateLaminarChurchillChu1975'],
  });

  test.each([
    [1e4, 5.4327, 4],
    [1e6, 16.5584, 4],
    [1e8, 61.065, 3],
    [1e9, 122.857, 3],
    [1e10, 252.278, 3],
  ])('all Rayleigh numbers: %d gives %f', (Ra, printed, digits) => {
    const found = nusseltVerticalPlateChurchillChu1975(Ra, 0.71);
    again.says('Nusselt number', found, printed.toFixed(digits));
  });

  test.each([
    [1e4, 5.8225, 4],
    [1e6, 16.942, 3],
    [1e8, 52.105, 3],
  ])('laminar: %d gives %f', (Ra, printed, digits) => {
    const found = nusseltVerticalPlateLaminarChurchillChu1975(Ra, 0.71);
    again.says('Nusselt number', found, printed.toFixed(digits));
  });
});

const example = (source: 'cengel' | 'incropera', where: string, methods: string[]) =>
  published({ source, where, kind: 'worked example', methods });

// Plate of 0.6 m, 90 °C in 30 °C; k .02808, Pr .7202, ν 1.896e-5.
describe('Çengel ex. 9-2, plate of 0.6 m', () => {
  const cengel = (...methods: string[]) => example('cengel', 'ex. 9-2', methods);
  const buoyancy = buoyancy_PerM3K(1 / 333, 1.896e-5, 1.896e-5 / 0.7202);
  const Ra = rayleigh(buoyancy, 60, 0.6);

  test('the Rayleigh number is 7.649e8', () => {
    cengel('rayleigh').says('Rayleigh number', Ra, '7.649e8', {
      within: 0.001,
      because: 'the source rounds g to 9.81 m/s²',
    });
  });

  test('standing, it has a Nusselt number of 113.34 and gives 114.6 W', () => {
    const nusselt = nusseltVerticalPlateChurchillChu1975(7.649e8, 0.7202);
    const standing = cengel('nusseltVerticalPlateChurchillChu1975');
    standing.says('Nusselt number', nusselt, '113.34');
    standing.says('heat [W]', ((nusselt * 0.02808) / 0.6) * 0.36 * 60, '114.6');
  });

  test('facing up it has a Nusselt number of 31.75 and gives 128.4 W', () => {
    const nusselt = nusseltHorizontalUpLaminar(7.649e8 / 4 ** 3); // area over perimeter is a quarter of the side
    const facingUp = cengel('nusseltHorizontalUpLaminar');
    facingUp.says('Nusselt number', nusselt, '31.75');
    facingUp.says('heat [W]', ((nusselt * 0.02808) / 0.15) * 0.36 * 60, '128.4');
  });

  test('black, it radiates 182.4 W', () => {
    cengel('radiationFlux').says('heat [W]', radiationFlux_WPerM2(1, 363, 303) * 0.36, '182.4');
  });
});

// Glass door 0.71 m high, 1.02 m wide, 232 °C in 23 °C.
describe('Incropera ex. 9.2, glass fire screen', () => {
  const screen = example('incropera', 'ex. 9.2', ['nusseltVerticalPlateChurchillChu1975']);
  const Ra = rayleigh(buoyancy_PerM3K(0.0025, 26.4e-6, 38.3e-6), 209, 0.71);
  const nusselt = nusseltVerticalPlateChurchillChu1975(1.813e9, 0.69);

  test('the Rayleigh number is 1.813e9', () => {
    example('incropera', 'ex. 9.2', ['rayleigh']).says('Rayleigh number', Ra, '1.813e9', {
      within: 0.001,
      because: 'the source rounds g to 9.8 m/s²',
    });
  });
  test('the Nusselt number is 147', () => screen.says('Nusselt number', nusselt, '147'));
  test('the coefficient is 7.0 W/m²K', () =>
    screen.says('heat transfer coefficient [W/(m²·K)]', (nusselt * 0.0338) / 0.71, '7.0'));
  test('the heat is 1060 W', () => {
    screen.says('heat [W]', ((nusselt * 0.0338) / 0.71) * 1.02 * 0.71 * 209, '1060', {
      off: 5,
      because: 'half a unit of the last significant digit',
    });
  });
});

// Duct 0.75 m wide, 0.3 m high, 45 °C in 15 °C.
describe('Incropera ex. 9.3, warm duct in a cellar', () => {
  const k_WPerMK = 0.0265;
  const buoyancy = buoyancy_PerM3K(0.0033, 16.2e-6, 22.9e-6);
  const sides = nusseltVerticalPlateLaminarChurchillChu1975(rayleigh(buoyancy, 30, 0.3), 0.71);
  const flat_m = 0.75 / 2;
  const Ra = rayleigh(buoyancy, 30, flat_m);
  const sides_WPerM2K = (sides * k_WPerMK) / 0.3;
  const top_WPerM2K = (nusseltHorizontalUpTurbulent(Ra) * k_WPerMK) / flat_m;
  const bottom_WPerM2K = (nusseltHorizontalDown(Ra) * k_WPerMK) / flat_m;

  test('sides, top and bottom have 4.23, 5.47 and 2.07 W/m²K (from memory)', () => {
    const memory = (method: string) =>
      published({ source: 'incropera', where: 'ex. 9.3', kind: 'from memory', methods: [method] });
    const rounded = {
      off: 0.011,
      because: 'the source rounds each Rayleigh number, and g to 9.8 m/s²',
    };
    const coefficient = 'heat transfer coefficient [W/(m²·K)]';
    memory('nusseltVerticalPlateLaminarChurchillChu1975').says(coefficient, sides_WPerM2K, '4.23', rounded);
    memory('nusseltHorizontalUpTurbulent').says(coefficient, top_WPerM2K, '5.47', rounded);
    memory('nusseltHorizontalDown').says(coefficient, bottom_WPerM2K, '2.07', rounded);
  });

  test('a metre of duct loses 246 W', () => {
    const lost_WPerM = (2 * 0.3 * sides_WPerM2K + 0.75 * (top_WPerM2K + bottom_WPerM2K)) * 30;
    example('incropera', 'ex. 9.3', [
      'nusseltVerticalPlateLaminarChurchillChu1975',
      'nusseltHorizontalUpTurbulent',
      'nusseltHorizontalDown',
    ]).says('heat of a metre [W/m]', lost_WPerM, '246');
  });
});
