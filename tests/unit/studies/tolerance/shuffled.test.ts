import { describe, expect, test } from 'vitest';
import { shuffled } from '../../../../src/studies/tolerance/shuffled.ts';

describe('an index shuffled', () => {
  test.each([1, 2, 3, 100, 1024, 4097])('among %i takes every place once', (count) => {
    const places = Array.from({ length: count }, (_, i) => shuffled(i, count, 7));
    expect(places.toSorted((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i));
  });

  test('goes elsewhere with another seed, and leaves no trace of its neighbours', () => {
    const places = Array.from({ length: 4096 }, (_, i) => shuffled(i, 4096, 1));
    const others = Array.from({ length: 4096 }, (_, i) => shuffled(i, 4096, 2));
    expect(places.filter((place, i) => place === others[i]).length).toBeLessThan(20);
    // Correlation of a place with the next one: that of chance, 1/√4096.
    const middle = 2047.5;
    const sum = places
      .slice(1)
      .reduce((all, place, i) => all + (place - middle) * ((places[i] as number) - middle), 0);
    expect(Math.abs(sum / 4096 / (4096 ** 2 / 12))).toBeLessThan(4 / 64);
  });
});
