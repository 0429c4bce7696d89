import { describe, expect, test } from 'vitest';
import { suddenContraction } from '../../../../src/core/losses/suddenContraction.ts';

describe('suddenContraction', () => {
  test('loses nothing where nothing narrows, and half a head out of a wide room', () => {
    expect(suddenContraction(1)).toBe(0);
    expect(suddenContraction(0)).toBe(0.5);
  });
});
