import { describe, expect, test } from 'vitest';
import { speedAtVoltage } from '../../../../src/core/fan/speedAtVoltage.ts';

describe('speedAtVoltage', () => {
  test('follows the voltage', () => {
    expect(speedAtVoltage(12, 12, 5)).toBe(1);
    expect(speedAtVoltage(9, 12, 5)).toBe(0.75);
    expect(speedAtVoltage(13.2, 12, 5)).toBeCloseTo(1.1, 15);
  });

  test('is nil below the start voltage, and not at it', () => {
    expect(speedAtVoltage(4.99, 12, 5)).toBe(0);
    expect(speedAtVoltage(5, 12, 5)).toBe(5 / 12);
  });
});
