import { describe, expect, test } from 'vitest';
import { additiveIndices } from '../../../src/core/solve/additiveIndices.ts';
import { uniformQuantile } from '../../../src/core/solve/distributions.ts';
import { quasiRandom } from '../../../src/core/solve/quasiRandom.ts';
import { rankCorrelation } from '../../../src/core/solve/rankCorrelation.ts';
import { classIndices } from '../../helpers/classIndices.ts';
import { published } from '../../helpers/published.ts';

const [a, b] = [7, 0.1];

/** sin x₁ + a sin² x₂ + b x₃⁴ sin x₁ over −π … π, and one input more that it does not know. */
function ishigami(count: number, seed: number) {
  const points = new Float64Array(4 * count);
  quasiRandom(4, seed).fill(0, count, points);
  const columns = [0, 1, 2, 3].map((d) =>
    Float64Array.from({ length: count }, (_, i) =>
      uniformQuantile(points[4 * i + d] as number, -Math.PI, Math.PI),
    ),
  ) as [Float64Array, Float64Array, Float64Array, Float64Array];
  const [x1, x2, x3] = columns;
  const result = x1.map(
    (x, i) => Math.sin(x) * (1 + b * (x3[i] as number) ** 4) + a * Math.sin(x2[i] as number) ** 2,
  );
  const shares = [0, 1, 2, 3].map((d) =>
    Float64Array.from({ length: count }, (_, i) => points[4 * i + d] as number),
  );
  return { columns, shares, result };
}

// The closed form is worked again here.
describe('Ishigami’s function, a = 7, b = 0.1', () => {
  const saltelli = published({
    source: 'Ishigami & Homma 1990; Saltelli et al. 2008, Global Sensitivity Analysis: The Primer',
    where: 'closed form',
    kind: 'from memory',
  });
  const printed = ['0.3139', '0.4424', '0', '0'];
  const expectShares = (found: readonly (number | undefined)[], off: number, because: string) =>
    printed.forEach((share, d) => {
      saltelli.says(`share of variance of x${d + 1}`, found[d] ?? Number.NaN, share, { off, because });
    });
  const variance = a ** 2 / 8 + (b * Math.PI ** 4) / 5 + (b ** 2 * Math.PI ** 8) / 18 + 1 / 2;

  test('has these shares in closed form', () => {
    const first = (0.5 * (1 + (b * Math.PI ** 4) / 5) ** 2) / variance;
    saltelli.says('share of variance of x1', first, '0.3139');
    saltelli.says('share of variance of x2', a ** 2 / 8 / variance, '0.4424');
  });

  // Powers up to the tenth follow a sine and its square to a thousandth.
  test.each([
    [1024, 0.02],
    [4096, 0.01],
    [16384, 0.005],
  ])('and by one fit to %i evenly spread draws, to %f', (count, within) => {
    const { shares, result } = ishigami(count, 11);
    const inputs = shares.map((each) => ({ shares: each, basis: 'legendre', degree: 10, alike: 1 }) as const);
    const found = additiveIndices(inputs, [result])?.[0] ?? [];
    expectShares(found, within, `${count} draws`);
  });

  test('and by classes of one input after the other, with which other checks compare', () => {
    const { columns, result } = ishigami(4096, 11);
    const found = classIndices(columns, result);
    expectShares(Array.from(found), 0.006, '4096 draws in classes');
  });

  test('its third input, which acts through the first alone, is not told by ranks either', () => {
    const { columns, result } = ishigami(4096, 11);
    expect(Math.abs(rankCorrelation(columns[2], result))).toBeLessThan(0.01);
    expect(rankCorrelation(columns[0], result)).toBeGreaterThan(0.4);
  });
});

describe('Spearman’s rank correlation', () => {
  test('of ten persons is −0.1758', () => {
    const score = [106, 86, 100, 101, 99, 103, 97, 113, 112, 110];
    const hours = [7, 0, 27, 50, 28, 29, 20, 12, 6, 17];
    const example = published({
      source: 'Example of many introductions: hours before a screen against a test of ten persons',
      where: '1 − 6 · 194/990',
      kind: 'worked example',
    });
    example.says('rank correlation', rankCorrelation(score, hours), '-0.1758');
  });
});
