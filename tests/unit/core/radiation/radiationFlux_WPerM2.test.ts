import { describe, expect, test } from 'vitest';
import { radiationFlux_WPerM2 } from '../../../../src/core/radiation/radiationFlux_WPerM2.ts';

describe('radiationFlux_WPerM2', () => {
  test('a surface as warm as the room gives nothing', () => {
    expect(radiationFlux_WPerM2(0.9, 300, 300)).toBe(0);
  });

  test('a cold surface takes what a warm one gives', () => {
    expect(radiationFlux_WPerM2(0.9, 290, 330)).toBe(-radiationFlux_WPerM2(0.9, 330, 290));
  });
});
