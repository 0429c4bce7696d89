import { describe, expect, test } from 'vitest';
import type { Limit } from '../../../../src/core/system/outcome.ts';
import { left_K, type Target } from '../../../../src/studies/sizing/target.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { solved } from '../../../helpers/solved.ts';

const { limits, heat } = solved(sampleInput(2, 3));
const limitOf = (key: Limit['key']) => limits.find((limit) => limit.key === key) as Limit;
const left = (target: Target, key: Limit['key'], swing = 1) =>
  left_K(target, limitOf(key), heat.entering_K, swing);
const every: Target = { ask: 'everyLimit', margin_K: 20 };
const film: Target = { ask: 'film', margin_K: 20 };

describe('what a limit leaves', () => {
  test('is its margin less the kelvin asked of it', () => {
    expect(left(every, 'bond')).toBeCloseTo((limitOf('bond').margin_K ?? 0) - 20, 12);
    expect(left(film, 'film')).toBeCloseTo((limitOf('film').margin_K ?? 0) - 20, 12);
  });

  test('is its whole margin where only the film is asked for more', () => {
    expect(left(film, 'bond')).toBe(limitOf('bond').margin_K);
    expect(left(film, 'joint')).toBe(limitOf('joint').margin_K);
  });

  test('with spare is nil exactly where the rises, multiplied by it, meet the limit', () => {
    const spareFactor = limitOf('joint').loadFactor ?? 0;
    expect(left({ ask: 'spare', spareFactor }, 'joint')).toBeCloseTo(0, 9);
    expect(left({ ask: 'spare', spareFactor: spareFactor * 0.99 }, 'joint')).toBeGreaterThan(0);
    expect(left({ ask: 'spare', spareFactor: spareFactor * 1.01 }, 'joint')).toBeLessThan(0);
  });

  test('of a film in pulses counts the top of its swing', () => {
    const rise_K = limitOf('film').value - heat.entering_K;
    expect(left(film, 'film', 1.5)).toBeCloseTo((limitOf('film').margin_K ?? 0) - 20 - 0.5 * rise_K, 9);
    expect(
      left({ ask: 'spare', spareFactor: (limitOf('film').loadFactor ?? 0) / 1.5 }, 'film', 1.5),
    ).toBeCloseTo(0, 9);
  });

  test('of a maker’s own figure is above nil up to that figure, whatever is asked', () => {
    const rated = limitOf('ratedPower');
    for (const target of [every, film, { ask: 'spare', spareFactor: 2 } as const]) {
      expect(left_K(target, { ...rated, loadFactor: 1 }, 300, 1)).toBeGreaterThanOrEqual(0);
      expect(left_K(target, { ...rated, loadFactor: 0.999 }, 300, 1)).toBeLessThan(0);
    }
  });

  test('of the sound is what the level may still grow, and of a stall nothing is asked', () => {
    const sound = { ...limitOf('film'), key: 'sound', quantity: 'sound', value: 30, limit: 33 } as const;
    expect(left_K(every, sound, 300, 1)).toBeGreaterThan(0);
    expect(left_K(every, { ...sound, value: 33.1 }, 300, 1)).toBeLessThan(0);
    expect(left_K(every, { ...limitOf('film'), key: 'stall', quantity: 'flow' }, 300, 1)).toBeNull();
  });
});
