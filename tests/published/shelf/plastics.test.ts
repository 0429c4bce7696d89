import { describe, expect, test } from 'vitest';
import type { CheckKind } from '../../../src/core/card.ts';
import { published } from '../../helpers/published.ts';
import { shelfValue } from '../../helpers/shelfValue.ts';

type Held = ReturnType<typeof published>;

/** The range that an entry gives for "elsewhere" holds an outside value in it. */
function saysWithinScatter(
  held: Held,
  quantity: string,
  cited: ReturnType<typeof shelfValue>,
  outside: string,
) {
  const [low, high] = cited.scatter ?? [cited.value, cited.value];
  held.says(quantity, cited.value, outside, {
    off: [cited.value - high * (1 + 1e-9), cited.value - low * (1 - 1e-9)],
    because: 'the scatter told beside the value',
  });
}

const conductivity = 'thermal conductivity [W/(m·K)]';
const heat = 'heat capacity [J/(m³·K)]';
const highest = 'highest temperature [K]';
const table = (source: string, where: string, kind: CheckKind = 'handbook') =>
  published({ source, where, kind });

// kg/m³, kJ/(kg·K), W/(m·K), °C, read from a copy of the page.
describe('Crawford 1998, Plastics Engineering, table 1.8, p. 31', () => {
  const crawford = table('crawford1998', 'table 1.8, p. 31');

  test.each([
    ['ABS', '1040', '1.3', '0.25', '70'],
    ['Cast acrylic (PMMA)', '1180', '1.5', '0.2', '50'],
    ['Polycarbonate', '1150', '1.2', '0.2', '125'],
    ['Polypropylene', '905', '2.0', '0.20', '100'],
    ['Rigid PVC', '1400', '0.9', '0.16', '50'],
    ['Polystyrene, impact-modified', '1050', '1.3', '0.15', '50'],
  ])(
    '%s: density %s, specific heat %s, conductivity %s, most in use %s °C',
    (name, density, specific, k, most) => {
      const heat_JPerM3K = String(Number(density) * Number(specific) * 1000);
      const softening_K = (Number(most) + 273.15).toFixed(2);
      saysWithinScatter(crawford, highest, shelfValue('sheet', name, 'softening_K'), softening_K);
      for (const [quantity, key, outside] of [
        [conductivity, 'sheet_WPerMK', k],
        [heat, 'sheetHeat_JPerM3K', heat_JPerM3K],
      ] as const) {
        const cited = shelfValue('sheet', name, key);
        saysWithinScatter(crawford, quantity, cited, outside);
        if (cited.source === 'crawford1998')
          crawford.says(quantity, cited.value, outside, { within: 0.01, because: 'taken from this table' });
      }
    },
  );

  test('PET: conductivity 0.2; nylon 66: 0.24; epoxy: 0.23, most in use 130 °C', () => {
    const pet = shelfValue('filament', 'Polyester (PET), 0.15 mm', 'filament_WPerMK');
    const nylon = shelfValue('filament', 'Nylon (PA 6), 0.15 mm', 'filament_WPerMK');
    const epoxy = (key: 'sheetK_WPerMK' | 'serviceLimit_K') =>
      shelfValue('bond', 'Epoxy without filler', key);
    crawford.says(`PET: ${conductivity}`, pet.value, '0.2');
    saysWithinScatter(crawford, `nylon: ${conductivity}`, nylon, '0.24');
    saysWithinScatter(crawford, `epoxy: ${conductivity}`, epoxy('sheetK_WPerMK'), '0.23');
    saysWithinScatter(crawford, `epoxy: ${highest}`, epoxy('serviceLimit_K'), '403.15');
  });
});

describe('makeitfrom.com, glycol-modified PET', () => {
  test('1.3 g/cm³ times 1200 J/(kg·K); 0.29 W/(m·K); deflects at 69 °C under 1.82 MPa', () => {
    const makeitfrom = table('materialsDatabase', 'glycol-modified PET');
    makeitfrom.says(heat, shelfValue('sheet', 'PETG', 'sheetHeat_JPerM3K').value, String(1300 * 1200));
    saysWithinScatter(makeitfrom, conductivity, shelfValue('sheet', 'PETG', 'sheet_WPerMK'), '0.29');
    saysWithinScatter(makeitfrom, highest, shelfValue('sheet', 'PETG', 'softening_K'), '342.15');
  });
});

describe('Sarvar, Poole & Witting 1990, abstract', () => {
  test('FR-4 across its plane: 0.343 W/(m·K)', () => {
    const sarvar = table('sarvar1990', 'abstract', 'measured');
    sarvar.says(conductivity, shelfValue('sheet', 'FR-4 glass laminate', 'sheet_WPerMK').value, '0.343', {
      within: 0.02,
      because: 'the shelf rounds to two digits',
    });
  });
});

describe('NIST, cryogenic material properties, G-10 CR', () => {
  const nist = (kind: CheckKind) => table('nistCryogenics', 'G-10 CR, fit up to 300 K', kind);

  test('its polynomial at 300 K times 1850 kg/m³ (from memory) is the heat capacity of the laminate', () => {
    const printed = [-2.4083, 7.6006, -8.2982, 7.3301, -4.2386, 1.4294, -0.24396, 0.015236];
    const logT = Math.log10(300);
    const heat_JPerKgK = 10 ** printed.reduce((sum, a, power) => sum + a * logT ** power, 0);
    const cited = shelfValue('sheet', 'FR-4 glass laminate', 'sheetHeat_JPerM3K');
    nist('from memory').says(heat, cited.value, String(Math.round(heat_JPerKgK * 1850)), {
      within: 0.02,
      because: 'the shelf rounds to two digits',
    });
  });

  test('its polynomial for the conductivity across the plane lies within the scatter told', () => {
    const printed = [-4.1236, 13.788, -26.068, 26.272, -14.663, 4.4954, -0.6905, 0.0397];
    const logT = Math.log10(300);
    const k_WPerMK = 10 ** printed.reduce((sum, a, power) => sum + a * logT ** power, 0);
    expect(k_WPerMK).toBeCloseTo(0.61, 2);
    const cited = shelfValue('sheet', 'FR-4 glass laminate', 'sheet_WPerMK');
    saysWithinScatter(nist('handbook'), conductivity, cited, k_WPerMK.toFixed(1));
  });
});

describe('matweb.com, sheathing plywood at 12 % moisture', () => {
  test.each(['0.11', '0.147'])('conductivity %s W/(m·K) lies within the scatter told', (k_WPerMK) => {
    const matweb = table('matweb.com, public database of materials', 'sheathing plywood at 12 % moisture');
    saysWithinScatter(matweb, conductivity, shelfValue('sheet', 'Birch plywood', 'sheet_WPerMK'), k_WPerMK);
  });
});

// Btu/(h·ft·°F), read from a copy of the page.
describe('Petrie, Handbook of Adhesives and Sealants, table 9.6', () => {
  const btu_WPerMK = 1.730735;

  test.each([
    ['Filled epoxy', 0.3, 'half alumina by weight, low'],
    ['Filled epoxy', 1, 'three quarters alumina by weight, high'],
    ['Aluminium-filled epoxy', 1, 'low'],
    ['Aluminium-filled epoxy', 2, 'high'],
    ['Silver epoxy', 1, 'the best, low'],
    ['Silver epoxy', 4, 'the best, high'],
  ])('%s: %d (%s)', (name, printed) => {
    const cited = shelfValue('bond', name, 'sheetK_WPerMK');
    const petrie = table('petrieAdhesives', 'table 9.6');
    saysWithinScatter(petrie, conductivity, cited, (printed * btu_WPerMK).toFixed(6));
  });
});

describe('CRC Handbook, thermal conductivity of glasses', () => {
  test('vitreous silica has 1.30 W/(m·K) at 0 °C and 1.40 at 50 °C', () => {
    const cited = shelfValue('filament', 'Fused silica fibre, 0.125 mm', 'filament_WPerMK');
    expect(cited.source).toBe('crcGlasses');
    const crc = table('crcGlasses', 'vitreous silica');
    crc.says(conductivity, cited.value, String((1.3 + 1.4) / 2));
  });
});
