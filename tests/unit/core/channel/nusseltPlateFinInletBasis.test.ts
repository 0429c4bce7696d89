import { describe, expect, test } from 'vitest';
import { nusseltPlateFinInletBasis } from '../../../../src/core/channel/nusseltPlateFinInletBasis.ts';

describe('nusseltPlateFinInletBasis', () => {
  test('at low flow all heat the air can carry is the limit: Re*·Pr/2', () => {
    expect(nusseltPlateFinInletBasis(1e-4, 0.71) / (0.5 * 1e-4 * 0.71)).toBeCloseTo(1, 4);
  });

  test('at high flow each fin is a plate of its own: 0.664·√Re*·∛Pr', () => {
    const Re = 1e12;
    expect(nusseltPlateFinInletBasis(Re, 0.71) / (0.664 * Math.sqrt(Re) * Math.cbrt(0.71))).toBeCloseTo(1, 4);
  });
});
