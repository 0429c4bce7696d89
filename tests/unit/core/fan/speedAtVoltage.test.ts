import { describe, expect, test } from 'vitest';
import { speedAtVoltage, speedOf } from '../../../../src/core/fan/speedAtVoltage.ts';

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

  test('is nil at next to no voltage, even where the fan is said to start at any', () => {
    expect(speedAtVoltage(0, 12, 0)).toBe(0);
    expect(speedAtVoltage(0.0119, 12, 0)).toBe(0);
    expect(speedAtVoltage(0.0121, 12, 0)).toBeGreaterThan(0);
  });
});

describe('speedOf', () => {
  test('of a new fan on a firm supply is that at its voltage', () => {
    expect(speedOf(9, 12, 5, 0, 0)).toBe(0.75);
  });

  test('falls with the supply and with age', () => {
    expect(speedOf(12, 12, 5, 0.1, 0)).toBeCloseTo(0.9, 15);
    expect(speedOf(12, 12, 5, 0, 0.2)).toBeCloseTo(0.8, 15);
    expect(speedOf(12, 12, 5, 0.1, 0.2)).toBeCloseTo(0.72, 15);
  });

  test('is nil where the sagging supply no longer starts the fan; age alone does not stop it', () => {
    expect(speedOf(12, 12, 9, 0.3, 0)).toBe(0);
    expect(speedOf(12, 12, 9, 0, 0.3)).toBeCloseTo(0.7, 15);
  });
});
