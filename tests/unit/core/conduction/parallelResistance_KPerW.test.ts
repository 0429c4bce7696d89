import { describe, expect, test } from 'vitest';
import { parallelResistance_KPerW } from '../../../../src/core/conduction/parallelResistance_KPerW.ts';

describe('parallelResistance_KPerW', () => {
  test('two equal ways halve the resistance', () => {
    expect(parallelResistance_KPerW(12, 12)).toBe(6);
  });

  test('a way without resistance takes everything', () => {
    expect(parallelResistance_KPerW(0, 12)).toBe(0);
  });
});
