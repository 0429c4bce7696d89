/**
 * Chance that a sum of squares of `degrees` standard normal numbers is `value` or more: the upper regularised incomplete gamma
 * function Q(ν/2, χ²/2), by series below and continued fraction above (Abramowitz & Stegun 1964, 26.4 and 6.5). 1e-12 or better.
 * @param degrees 1 at least; @param value any; below nil the chance is 1
 */
export function chiSquareTail(value: number, degrees: number): number {
  const a = degrees / 2;
  const x = value / 2;
  if (!(x > 0)) return 1;
  const front = Math.exp(a * Math.log(x) - x - logGammaHalf(degrees));
  return x < a + 1 ? Math.max(0, 1 - front * lowerSeries(a, x)) : front * upperFraction(a, x);
}

/** ln Γ(ν/2), exact by the recurrence from Γ(½) = √π and Γ(1) = 1. */
function logGammaHalf(degrees: number): number {
  let sum = degrees % 2 === 1 ? 0.5 * Math.log(Math.PI) : 0;
  for (let twice = degrees % 2 === 1 ? 1 : 2; twice < degrees; twice += 2) sum += Math.log(twice / 2);
  return sum;
}

function lowerSeries(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let k = 1; k < 1000 && term > 1e-17 * sum; k++) {
    term *= x / (a + k);
    sum += term;
  }
  return sum;
}

/** Lentz’s way from the front, never dividing by nil. */
function upperFraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let value = d;
  for (let k = 1; k < 1000; k++) {
    const numerator = -k * (k - a);
    b += 2;
    d = 1 / nonzero(numerator * d + b);
    c = nonzero(b + numerator / c);
    const factor = d * c;
    value *= factor;
    if (Math.abs(factor - 1) < 1e-15) break;
  }
  return value;
}

function nonzero(value: number): number {
  return Math.abs(value) < 1e-300 ? 1e-300 : value;
}
