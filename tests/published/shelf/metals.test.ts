import { describe, expect, test } from 'vitest';
import type { SourceKey } from '../../../src/core/sources.ts';
import { published } from '../../helpers/published.ts';
import { shelfEntry, shelfValue } from '../../helpers/shelfValue.ts';

const table = (source: SourceKey, where?: string) =>
  published({ source, ...(where === undefined ? {} : { where }), kind: 'handbook' });
const conductivity = 'thermal conductivity [W/(m·K)]';
const heat = 'heat capacity [J/(m³·K)]';

/** Density times specific heat, to a percent: the sources round both. */
function saysHeat(
  from: ReturnType<typeof published>,
  name: string,
  density_kgPerM3: number,
  heat_JPerKgK: number,
  within = 0.01,
) {
  const { value } = shelfValue('alloy', name, 'heat_JPerM3K');
  from.says(heat, value, String(Math.round(density_kgPerM3 * heat_JPerKgK)), {
    within,
    because: 'density times specific heat, both rounded',
  });
}

describe('Aluminum Association, typical properties, as in public data sheets', () => {
  const association = table('aluminumAssociation');

  test.each([
    ['Aluminium EN AW-6063', '200', 2680, 900],
    ['Aluminium EN AW-6061', '167', 2700, 896],
    ['Aluminium EN AW-5083', '117', 2660, 900],
  ])('%s: %s W/(m·K), %d kg/m³, %d J/(kg·K)', (name, k, density_kgPerM3, heat_JPerKgK) => {
    association.says(conductivity, shelfValue('alloy', name, 'k_WPerMK').value, k);
    saysHeat(association, name, density_kgPerM3, heat_JPerKgK);
  });

  test('6063 as T5 has 209 and soft 218 W/(m·K), within the scatter told', () => {
    const [low, high] = shelfValue('alloy', 'Aluminium EN AW-6063', 'k_WPerMK').scatter ?? [0, 0];
    expect(low).toBeLessThan(200);
    association.says(`soft: ${conductivity}`, high, '218', {
      off: 0,
      because: 'upper end of the scatter told',
    });
  });
});

describe('public data sheets of extruded profiles', () => {
  const profiles = table('wroughtProfiles');

  test.each([
    ['Aluminium EN AW-6060', 200, 220],
    ['Aluminium EN AW-6082', 170, 220],
  ])('%s: %d to %d W/(m·K), of which the lower end is taken', (name, low, high) => {
    const cited = shelfValue('alloy', name, 'k_WPerMK');
    const [from, to] = cited.scatter ?? [Number.NaN, Number.NaN];
    const exactly = { off: 0, because: 'the range as printed' };
    profiles.says(conductivity, cited.value, String(low), exactly);
    profiles.says(`lower end: ${conductivity}`, from, String(low), exactly);
    profiles.says(`upper end: ${conductivity}`, to, String(high), exactly);
  });

  test('EN AW-6060: 2700 kg/m³, 890 J/(kg·K)', () => saysHeat(profiles, 'Aluminium EN AW-6060', 2700, 890));
});

describe('makeitfrom.com', () => {
  const makeitfrom = table('materialsDatabase');

  test('EN AC-44100: 130 W/(m·K), 2.5 g/cm³ and 900 J/(kg·K)', () => {
    const name = 'Cast aluminium EN AC-44300';
    makeitfrom.says(conductivity, shelfValue('alloy', name, 'k_WPerMK').value, '130');
    // The density is printed with two digits.
    saysHeat(makeitfrom, name, 2500, 900, 0.05);
  });

  test('copper of 100 % IACS: 390 W/(m·K), 9.0 g/cm³ and 390 J/(kg·K)', () => {
    makeitfrom.says(conductivity, shelfValue('alloy', 'Copper Cu-ETP', 'k_WPerMK').value, '390');
    makeitfrom.says(`tab: ${conductivity}`, shelfValue('tab', 'Copper Cu-ETP', 'tab_WPerMK').value, '390');
    saysHeat(makeitfrom, 'Copper Cu-ETP', 9000, 390, 0.02);
  });
});

describe('Copper Development Association, C27000, as in public data sheets', () => {
  test('67 Btu/(h·ft·°F), 8.47, 0.09 Btu/(lb·°F)', () => {
    const copper = table('copperData', 'C27000');
    const k_WPerMK = (67 * 1.730735).toFixed(3);
    const rounded = { off: 0.5, because: 'the shelf rounds to whole units' };
    copper.says(conductivity, shelfValue('alloy', 'Brass CuZn37', 'k_WPerMK').value, k_WPerMK, rounded);
    copper.says(
      `tab: ${conductivity}`,
      shelfValue('tab', 'Brass CuZn37', 'tab_WPerMK').value,
      k_WPerMK,
      rounded,
    );
    saysHeat(copper, 'Brass CuZn37', 8470, 0.09 * 4186.8);
  });
});

describe('Thome 2008, total emittances', () => {
  const thome = table('thome2008', 'table of total emittances');

  test.each([
    ['Aluminium, polished', '0.05'],
    ['Aluminium, as rolled or extruded', '0.09'],
    ['Brass, dull', '0.22'],
    ['Any metal, painted or powder coated', '0.9'],
  ])('%s: %s', (name, printed) => {
    thome.says('emissivity', shelfValue('finish', name, 'emissivity').value, printed);
  });

  test('heavily oxidised 0.20 to 0.33, copper slightly polished to dull 0.12 to 0.15', () => {
    const exactly = { off: 0, because: 'the range as printed' };
    for (const [name, low, high] of [
      ['Aluminium, heavily oxidised', '0.20', '0.33'],
      ['Copper, slightly tarnished', '0.12', '0.15'],
    ] as const) {
      const [from, to] = shelfValue('finish', name, 'emissivity').scatter ?? [Number.NaN, Number.NaN];
      thome.says(`emissivity, low: ${name}`, from, low, exactly);
      thome.says(`emissivity, high: ${name}`, to, high, exactly);
    }
  });
});

describe('alasir.com, reference table of solder alloys', () => {
  const solders = table('solderTable');
  const solidus = 'solid below [°C]';

  test.each([
    ['Sn96.5Ag3Cu0.5', '58', '217'],
    ['Sn95.5Ag3.8Cu0.7', '60', '217'],
    ['Sn96.5Ag3.5', '55', '221'],
    ['Sn63Pb37', '50', '183'],
    ['Sn60Pb40', '49', '183'],
    ['Sn62Pb36Ag2', '50', '179'],
  ])('%s: %s W/(m·K), solid below %s °C', (name, k, solidus_degC) => {
    solders.says(conductivity, shelfValue('solder', name, 'solder_WPerMK').value, k);
    solders.says(solidus, (shelfEntry('solder', name).solidus?.value ?? 0) - 273.15, solidus_degC);
  });

  test('Sn99.3Cu0.7: 66 W/(m·K); another public table has 53, and the scatter told holds both', () => {
    const [low, high] = shelfValue('solder', 'Sn99.3Cu0.7', 'solder_WPerMK').scatter ?? [0, 0];
    expect(low).toBe(53);
    solders.says(conductivity, high, '66', { off: 0, because: 'upper end of the scatter told' });
    solders.says(solidus, (shelfEntry('solder', 'Sn99.3Cu0.7').solidus?.value ?? 0) - 273.15, '227');
  });
});

describe('microwaves101.com, aluminium nitride', () => {
  test('170 W/(m·K), 3.26 g/cm³, 0.82 J/(g·K)', () => {
    const encyclopedia = table('microwaveEncyclopedia', 'aluminium nitride');
    encyclopedia.says(
      conductivity,
      shelfValue('ceramic', 'Aluminium nitride', 'ceramic_WPerMK').value,
      '170',
    );
    const { value } = shelfValue('ceramic', 'Aluminium nitride', 'ceramicHeat_JPerM3K');
    encyclopedia.says(heat, value, String(3260 * 820), {
      within: 0.01,
      because: 'density times specific heat, both rounded',
    });
  });
});
