import { describe, expect, test } from 'vitest';
import { figureSpread, histogram } from '../../../../src/studies/tolerance/summaries.ts';

const values = Float64Array.from({ length: 101 }, (_, i) => i - 30);

describe('a figure over all boxes', () => {
  test('has mean, middle and the value below which so many of a hundred lie', () => {
    expect(figureSpread('film_K', values, 17)).toEqual({
      key: 'film_K',
      mean: 20,
      p5: -25,
      p50: 20,
      p95: 65,
      nominal: 17,
    });
  });

  test('of no box is none', () => {
    expect(figureSpread('film_K', new Float64Array(0), 17)).toBeNull();
    expect(histogram(new Float64Array(0), new Uint8Array(0))).toBeNull();
  });
});

describe('the histogram', () => {
  test('counts every box once, those that hold apart, in bins at round numbers with an edge at nil', () => {
    const found = histogram(
      values,
      Uint8Array.from(values, (value) => Number(value >= 0)),
    );
    if (!found) throw new Error('there are values');
    const { edges, holding, failing } = found;
    expect(edges).toContain(0);
    expect(edges).toHaveLength(holding.length + 1);
    expect(holding.length).toBeLessThanOrEqual(30);
    const total = (counts: readonly number[]) => counts.reduce((sum, each) => sum + each, 0);
    expect([total(holding), total(failing)]).toEqual([71, 30]);
    const atNil = edges.indexOf(0);
    expect(total(failing.slice(atNil))).toBe(0);
    expect(total(holding.slice(0, atNil))).toBe(0);
  });

  test('of equal values is narrow and holds them all', () => {
    const found = histogram(new Float64Array(9).fill(61.7), new Uint8Array(9).fill(1));
    expect(found?.holding.reduce((sum, each) => sum + each, 0)).toBe(9);
    expect((found?.edges.at(-1) ?? 0) - (found?.edges[0] ?? 0)).toBeLessThan(1);
  });
});
