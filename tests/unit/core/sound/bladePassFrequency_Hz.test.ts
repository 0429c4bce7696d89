import { describe, expect, test } from 'vitest';
import { bladePassFrequency_Hz } from '../../../../src/core/sound/bladePassFrequency_Hz.ts';

describe('bladePassFrequency_Hz', () => {
  test('counts the blades that pass in a second', () => {
    expect(bladePassFrequency_Hz(7, 50)).toBe(350);
    expect(bladePassFrequency_Hz(5, 0)).toBe(0);
  });
});
