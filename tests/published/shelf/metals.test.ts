import { describe, expect, test } from 'vitest';
import { expectPublished } from '../../helpers/published.ts';
import { shelfEntry, shelfValue } from '../../helpers/shelfValue.ts';

/** Density times specific heat, to a percent: the sources round both. */
function expectHeat(name: string, density_kgPerM3: number, heat_JPerKgK: number, within = 0.01) {
  const { value } = shelfValue('alloy', name, 'heat_JPerM3K');
  expect(Math.abs(value / (density_kgPerM3 * heat_JPerKgK) - 1)).toBeLessThan(within);
}

describe('Aluminum Association, typical properties, as in public data sheets', () => {
  test.each([
    ['Aluminium EN AW-6063', '200', 2680, 900],
    ['Aluminium EN AW-6061', '167', 2700, 896],
    ['Aluminium EN AW-5083', '117', 2660, 900],
  ])('%s: %s W/(m·K), %d kg/m³, %d J/(kg·K)', (name, k, density_kgPerM3, heat_JPerKgK) => {
    expectPublished(shelfValue('alloy', name, 'k_WPerMK').value, k);
    expectHeat(name, density_kgPerM3, heat_JPerKgK);
  });

  test('6063 as T5 has 209 and soft 218 W/(m·K), within the scatter told', () => {
    const [low, high] = shelfValue('alloy', 'Aluminium EN AW-6063', 'k_WPerMK').scatter ?? [0, 0];
    expect(low).toBeLessThan(200);
    expect(high).toBe(218);
  });
});

describe('public data sheets of extruded profiles', () => {
  test.each([
    ['Aluminium EN AW-6060', 200, 220],
    ['Aluminium EN AW-6082', 170, 220],
  ])('%s: %d to %d W/(m·K), of which the lower end is taken', (name, low, high) => {
    const cited = shelfValue('alloy', name, 'k_WPerMK');
    expect([cited.value, ...(cited.scatter ?? [])]).toEqual([low, low, high]);
  });

  test('EN AW-6060: 2700 kg/m³, 890 J/(kg·K)', () => expectHeat('Aluminium EN AW-6060', 2700, 890));
});

describe('makeitfrom.com', () => {
  test('EN AC-44100: 130 W/(m·K), 2.5 g/cm³ and 900 J/(kg·K)', () => {
    const name = 'Cast aluminium EN AC-44300';
    expectPublished(shelfValue('alloy', name, 'k_WPerMK').value, '130');
    // The density is printed with two digits.
    expectHeat(name, 2500, 900, 0.05);
  });

  test('copper of 100 % IACS: 390 W/(m·K), 9.0 g/cm³ and 390 J/(kg·K)', () => {
    expectPublished(shelfValue('alloy', 'Copper Cu-ETP', 'k_WPerMK').value, '390');
    expectPublished(shelfValue('tab', 'Copper Cu-ETP', 'tab_WPerMK').value, '390');
    expectHeat('Copper Cu-ETP', 9000, 390, 0.02);
  });
});

describe('Copper Development Association, C27000, as in public data sheets', () => {
  test('67 Btu/(h·ft·°F), 8.47, 0.09 Btu/(lb·°F)', () => {
    const k_WPerMK = 67 * 1.730735;
    expect(shelfValue('alloy', 'Brass CuZn37', 'k_WPerMK').value).toBeCloseTo(k_WPerMK, 0);
    expect(shelfValue('tab', 'Brass CuZn37', 'tab_WPerMK').value).toBeCloseTo(k_WPerMK, 0);
    expectHeat('Brass CuZn37', 8470, 0.09 * 4186.8);
  });
});

describe('Thome 2008, total emittances', () => {
  test.each([
    ['Aluminium, polished', '0.05'],
    ['Aluminium, as rolled or extruded', '0.09'],
    ['Brass, dull', '0.22'],
    ['Any metal, painted or powder coated', '0.9'],
  ])('%s: %s', (name, printed) => {
    expectPublished(shelfValue('finish', name, 'emissivity').value, printed);
  });

  test('heavily oxidised 0.20 to 0.33, copper slightly polished to dull 0.12 to 0.15', () => {
    expect(shelfValue('finish', 'Aluminium, heavily oxidised', 'emissivity').scatter).toEqual([0.2, 0.33]);
    expect(shelfValue('finish', 'Copper, slightly tarnished', 'emissivity').scatter).toEqual([0.12, 0.15]);
  });
});

describe('alasir.com, reference table of solder alloys', () => {
  test.each([
    ['Sn96.5Ag3Cu0.5', '58', '217'],
    ['Sn95.5Ag3.8Cu0.7', '60', '217'],
    ['Sn96.5Ag3.5', '55', '221'],
    ['Sn63Pb37', '50', '183'],
    ['Sn60Pb40', '49', '183'],
    ['Sn62Pb36Ag2', '50', '179'],
  ])('%s: %s W/(m·K), solid below %s °C', (name, k, solidus_degC) => {
    expectPublished(shelfValue('solder', name, 'solder_WPerMK').value, k);
    expectPublished((shelfEntry('solder', name).solidus?.value ?? 0) - 273.15, solidus_degC);
  });

  test('Sn99.3Cu0.7: 66 W/(m·K); another public table has 53, and the scatter told holds both', () => {
    expect(shelfValue('solder', 'Sn99.3Cu0.7', 'solder_WPerMK').scatter).toEqual([53, 66]);
    expectPublished((shelfEntry('solder', 'Sn99.3Cu0.7').solidus?.value ?? 0) - 273.15, '227');
  });
});

describe('microwaves101.com, aluminium nitride', () => {
  test('170 W/(m·K), 3.26 g/cm³, 0.82 J/(g·K)', () => {
    expectPublished(shelfValue('ceramic', 'Aluminium nitride', 'ceramic_WPerMK').value, '170');
    const { value } = shelfValue('ceramic', 'Aluminium nitride', 'ceramicHeat_JPerM3K');
    expect(Math.abs(value / (3260 * 820) - 1)).toBeLessThan(0.01);
  });
});
