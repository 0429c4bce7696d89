import { describe, expect, test } from 'vitest';
import { countInBins, roundEdges } from '../../../../src/core/solve/histogram.ts';

describe('roundEdges', () => {
  test.each([
    [41.3, 83.2, 12, [40, 45, 50, 55, 60, 65, 70, 75, 80, 85]],
    [0.12, 0.58, 6, [0.1, 0.2, 0.3, 0.4, 0.5, 0.6]],
    [-3, 3, 4, [-4, -2, 0, 2, 4]],
    [0, 10, 11, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]],
    [0.3, 0.4, 2, [0.3, 0.4]],
  ])('from %f to %f in %i bins at most', (low, high, most, edges) => {
    expect(roundEdges(low, high, most)).toEqual(edges);
  });

  test('reach from end to end, no more bins than wanted', () => {
    for (let i = 1; i < 400; i++) {
      const [low, width, most] = [Math.tan(i), 10 ** (4 * Math.sin(7 * i)), 2 + (i % 40)];
      const edges = roundEdges(low, low + width, most);
      expect(edges[0]).toBeLessThanOrEqual(low + 1e-8 * width);
      expect(edges.at(-1)).toBeGreaterThanOrEqual(low + width * (1 - 1e-8));
      expect(edges.length - 1).toBeLessThanOrEqual(most);
      expect(edges.length - 1).toBeGreaterThanOrEqual(Math.floor(most / 3));
    }
  });

  test('of a single value are about it', () => {
    for (const value of [0, 5, -71.3, 1e-9, 4e11]) {
      const edges = roundEdges(value, value, 10);
      expect(edges[0]).toBeLessThanOrEqual(value);
      expect(edges.at(-1)).toBeGreaterThan(value);
      expect(edges.length).toBeLessThan(5);
    }
  });
});

describe('countInBins', () => {
  test('gives an edge to the bin above it, the last to the last bin', () => {
    expect(countInBins([0, 0.5, 1, 1.5, 2, 3], [0, 1, 2, 3])).toEqual([2, 2, 2]);
  });

  test('counts every value, what lies beyond in the end bins', () => {
    expect(countInBins([-5, 0.5, 99], [0, 1, 2])).toEqual([2, 1]);
    expect(countInBins([], [0, 1])).toEqual([0]);
  });
});
