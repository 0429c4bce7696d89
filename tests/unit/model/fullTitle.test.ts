import { describe, expect, test } from 'vitest';
import { freeVariant, fullTitle, nextVariant } from '../../../src/model/fullTitle.ts';

describe('what a design is called', () => {
  test('is its title, with the variant where there is one', () => {
    expect(fullTitle({ title: 'Bank', variant: '' })).toBe('Bank');
    expect(fullTitle({ title: 'Bank', variant: 'tight' })).toBe('Bank · tight');
  });

  test('one more variant has the first letter that is free', () => {
    expect(nextVariant([''])).toBe('B');
    expect(nextVariant(['', 'B', 'D'])).toBe('C');
  });

  test('a wanted name gets a number where it is taken, and stays short', () => {
    expect(freeVariant('tight', ['B'])).toBe('tight');
    expect(freeVariant('tight', ['tight', 'tight 2'])).toBe('tight 3');
    const long = 'x'.repeat(40);
    expect(freeVariant(long, [long]).length).toBeLessThanOrEqual(40);
  });
});
