export type RootResult =
  | { readonly ok: true; readonly root: number; readonly residual: number; readonly iterations: number }
  | { readonly ok: false; readonly reason: 'notBracketed' | 'notFinite' };

/**
 * Root of `f` between `a` and `b` (Brent 1973: inverse quadratic or secant steps, halving where they misbehave).
 * Never throws; says why where the ends do not bracket a root or `f` is not finite.
 * @param tolerance on the root, absolute
 */
export function brentRoot(f: (x: number) => number, a: number, b: number, tolerance: number): RootResult {
  let fa = f(a);
  let fb = f(b);
  if (!Number.isFinite(fa) || !Number.isFinite(fb)) return { ok: false, reason: 'notFinite' };
  if (sameSide(fa, fb)) return { ok: false, reason: 'notBracketed' };
  let c = a;
  let fc = fa;
  let step = b - a;
  let before = step;
  for (let iterations = 0; iterations < 200; iterations++) {
    if (sameSide(fb, fc)) {
      c = a;
      fc = fa;
      step = b - a;
      before = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) [a, b, c, fa, fb, fc] = [b, c, b, fb, fc, fb];
    const least = 2 * Number.EPSILON * Math.abs(b) + 0.5 * tolerance;
    const half = 0.5 * (c - b);
    if (Math.abs(half) <= least || fb === 0) return { ok: true, root: b, residual: fb, iterations };
    const tried =
      Math.abs(before) >= least && Math.abs(fa) > Math.abs(fb)
        ? interpolate(a, b, c, fa, fb, fc, half)
        : null;
    if (
      tried !== null &&
      Math.abs(tried) < Math.min(1.5 * Math.abs(half) - 0.5 * least, 0.5 * Math.abs(before))
    ) {
      before = step;
      step = tried;
    } else {
      before = half;
      step = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > least ? step : Math.sign(half) * least;
    fb = f(b);
    if (!Number.isFinite(fb)) return { ok: false, reason: 'notFinite' };
  }
  return { ok: true, root: b, residual: fb, iterations: 200 };
}

/** By sign: the product of two tiny values would be nil. */
function sameSide(a: number, b: number): boolean {
  return Math.sign(a) * Math.sign(b) > 0;
}

/** Secant step with two distinct points, inverse quadratic with three; `null` where it points away from the root. */
function interpolate(
  a: number,
  b: number,
  c: number,
  fa: number,
  fb: number,
  fc: number,
  half: number,
): number | null {
  const s = fb / fa;
  let p = 2 * half * s;
  let q = 1 - s;
  if (a !== c) {
    const u = fa / fc;
    const r = fb / fc;
    p = s * (2 * half * u * (u - r) - (b - a) * (r - 1));
    q = (u - 1) * (r - 1) * (s - 1);
  }
  const step = -p / q;
  return Number.isFinite(step) && step * half > 0 ? step : null;
}
