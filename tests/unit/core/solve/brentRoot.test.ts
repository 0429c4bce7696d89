import { describe, expect, test } from 'vitest';
import { brentRoot } from '../../../../src/core/solve/brentRoot.ts';

describe('brentRoot', () => {
  test.each([
    ['a cubic', (x: number) => x * x * x - 2 * x - 5, 2, 3, 2.0945514815423265],
    ['a cosine against a line', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['a steep exponential', (x: number) => Math.exp(20 * x) - 1e4, 0, 5, Math.log(1e4) / 20],
    ['a flat ninth power', (x: number) => (x - 1) ** 9, -5, 2.3, 1],
    ['a kink', (x: number) => (x < 1 ? 1e-3 * (x - 1) : 1e3 * (x - 1)), 0, 4, 1],
  ])('finds the root of %s', (_, f, a, b, root) => {
    const found = brentRoot(f, a, b, 1e-12);
    if (!found.ok) throw new Error(found.reason);
    expect(Math.abs(found.root - root)).toBeLessThan(2e-12);
    expect(found.residual).toBe(f(found.root));
  });

  test('takes the ends in either order', () => {
    const f = (x: number) => x * x - 2;
    expect(brentRoot(f, 2, 0, 1e-14)).toMatchObject({ ok: true, root: expect.closeTo(Math.SQRT2, 12) });
  });

  test('takes an end that is the root', () => {
    expect(brentRoot((x) => x - 3, 3, 5, 1e-9)).toMatchObject({ ok: true, root: 3, residual: 0 });
    expect(brentRoot((x) => x - 3, 1, 3, 1e-9)).toMatchObject({ ok: true, root: 3, residual: 0 });
  });

  test('halves down to the place of a jump', () => {
    const found = brentRoot((x) => (x < 1 / 3 ? -1 : 1e-9), 0, 1, 1e-12);
    expect(found).toMatchObject({ ok: true, root: expect.closeTo(1 / 3, 11) });
  });

  test('needs few evaluations of a smooth function', () => {
    let calls = 0;
    brentRoot(
      (x) => {
        calls++;
        return Math.exp(x) - 2;
      },
      0,
      2,
      1e-13,
    );
    expect(calls).toBeLessThan(15);
  });

  test('says that the ends do not bracket a root', () => {
    const reason = { ok: false, reason: 'notBracketed' };
    expect(brentRoot((x) => x * x + 1, -1, 1, 1e-9)).toEqual(reason);
    expect(brentRoot((x) => 1e-200 * (x + 5), 0, 1, 1e-9)).toEqual(reason);
  });

  test('finds the root of a function whose values are tiny', () => {
    expect(brentRoot((x) => 1e-200 * (x - 0.3), 0, 1, 1e-12)).toMatchObject({
      root: expect.closeTo(0.3, 11),
    });
  });

  test.each([
    ['at an end', (x: number) => 1 / x, 0, 1],
    ['on the way', (x: number) => (Math.abs(x) < 0.5 ? Number.NaN : x), -1, 1.1],
  ])('says that the function is not finite %s', (_, f, a, b) => {
    expect(brentRoot(f, a, b, 1e-9)).toEqual({ ok: false, reason: 'notFinite' });
  });
});
