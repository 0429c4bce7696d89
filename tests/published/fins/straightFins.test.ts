import { describe, test } from 'vitest';
import { finEfficiency } from '../../../src/core/fins/finEfficiency.ts';
import { published } from '../../helpers/published.ts';

const program = published({
  source: 'incropera',
  where: 'ch. 3, straight fin, in a separate Python program',
  kind: 'worked again',
  methods: ['finEfficiency'],
});

describe('straight fins, half their thickness added for the tip (independent Python computation)', () => {
  test.each([
    [30, 200, 1, 20, '0.95999'],
    [50, 200, 1, 30, '0.86923'],
    [100, 180, 0.8, 25, '0.77989'],
    [25, 167, 1.5, 40, '0.90243'],
  ])('h %d, k %d, %f × %d mm: %s', (h, k, thickness_mm, length_mm, printed) => {
    const height_m = (length_mm + thickness_mm / 2) * 1e-3;
    program.says('fin efficiency', finEfficiency(h, k, thickness_mm * 1e-3, height_m), printed);
  });

  test('h 30, k 200, 1 × 20 mm with a tip that gives no heat: 0.96183', () => {
    program.says('fin efficiency', finEfficiency(30, 200, 1e-3, 20e-3), '0.96183');
  });

  test.each([
    [30, 200, 1, 20, '0.959992'],
    [100, 180, 0.8, 25, '0.779886'],
  ])('h %d, k %d, %f × %d mm, exact with a cooled tip: %s', (h, k, thickness_mm, length_mm, printed) => {
    const corrected = finEfficiency(h, k, thickness_mm * 1e-3, (length_mm + thickness_mm / 2) * 1e-3);
    program.says('fin efficiency', corrected, printed, {
      within: 1e-5,
      because: 'the longer fin only stands for the cooled tip',
    });
  });
});

// Holman, Heat Transfer, ex. 2.8: aluminium fin 3 mm × 75 mm, foot 300 °C, air 50 °C, 10 W/m²K.
describe('Holman ex. 2.8', () => {
  test('the fin gives 360 W a metre', () => {
    const height_m = 75e-3 + 1.5e-3;
    const heat_WPerM = finEfficiency(10, 200, 3e-3, height_m) * 2 * height_m * 10 * 250;
    const holman = published({
      source: 'Holman, Heat Transfer; public textbook companion',
      where: 'ex. 2.8',
      kind: 'worked example',
      methods: ['finEfficiency'],
    });
    holman.says('heat of a metre [W/m]', heat_WPerM, '360', {
      within: 0.0028,
      because: 'the source rounds mL to two decimals on the way',
    });
  });
});
