import { describe, expect, test } from 'vitest';
import { viscosity_PaS } from '../../../../src/core/air/viscosity_PaS.ts';

describe('viscosity_PaS', () => {
  test('rises with temperature, as in every gas', () => {
    for (let T = 170; T < 600; T += 10) expect(viscosity_PaS(T + 10)).toBeGreaterThan(viscosity_PaS(T));
  });

  test('is hot enough at last to follow the square root of temperature', () => {
    expect(viscosity_PaS(4e8) / viscosity_PaS(1e8)).toBeCloseTo(2, 5);
  });
});
