import { describe, test } from 'vitest';
import { bondConductivityByVolume } from '../../../src/core/conduction/bondConductivityByVolume.ts';
import { bondConductivityWithFilament } from '../../../src/core/conduction/bondConductivityWithFilament.ts';
import { bondResistance_KPerW } from '../../../src/core/conduction/bondResistance_KPerW.ts';
import { published } from '../../helpers/published.ts';

// A trade page that says 0.5 K·cm²/W for the first one is out by ten.
describe('Bond lines, worked by hand', () => {
  const hand = published({
    source: 'interpackBond2007',
    where: 't/(k·A) worked by hand',
    kind: 'worked again',
    methods: ['bondResistance'],
  });

  test('100 µm at 0.2 W/mK is 5.0 K·cm²/W', () => {
    const oneSquareCentimetre_m2 = 1e-4;
    const found = bondResistance_KPerW(100e-6, 0.2, oneSquareCentimetre_m2, 0, 0);
    hand.says('resistance of one square centimetre [K/W]', found, '5.0', { off: 5e-7, because: 'exact' });
  });

  test.each([
    [0.15e-3, 1, 7.5],
    [0.25e-3, 1, 12.5],
    [0.15e-3, 0.25, 30],
  ])('%f m at %f W/mK on 20 mm² is %f K/W', (thickness_m, k_WPerMK, printed_KPerW) => {
    const found = bondResistance_KPerW(thickness_m, k_WPerMK, 20e-6, 0, 0);
    hand.says('thermal resistance [K/W]', found, printed_KPerW.toFixed(3));
  });
});

describe('Two 0.15 mm nylon filaments × 6 mm in 20 mm² of adhesive at 1 W/mK', () => {
  const integrated = published({
    source: 'ownComputation',
    where: 'numerical integration over the filament’s section in a separate program',
    kind: 'computed elsewhere',
    methods: ['bondConductivityWithFilament'],
  });
  const quantity = 'conductivity of the bond line [W/(m·K)]';
  const bond = {
    adhesive_WPerMK: 1,
    filament_WPerMK: 0.25,
    filament_m: 0.15e-3,
    filamentLength_m: 12e-3,
    area_m2: 20e-6,
  };

  test('is 0.938 W/mK by columns', () => {
    integrated.says(quantity, bondConductivityWithFilament(bond), '0.938');
  });

  test('is 0.316 W/mK right under the filament', () => {
    const covered = { ...bond, area_m2: bond.filament_m * bond.filamentLength_m };
    integrated.says(quantity, bondConductivityWithFilament(covered), '0.316');
  });

  test('is 0.947 W/mK by volume', () => {
    const hand = published({
      source: 'ownComputation',
      where: 'layers side by side, worked by hand',
      kind: 'worked again',
      methods: ['bondConductivityByVolume'],
    });
    hand.says(quantity, bondConductivityByVolume(bond), '0.947');
  });
});
