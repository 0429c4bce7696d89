import { describe, expect, test } from 'vitest';
import { suddenExpansion } from '../../../../src/core/losses/suddenExpansion.ts';

describe('suddenExpansion', () => {
  test('loses nothing where nothing widens, and the whole head into the open', () => {
    expect(suddenExpansion(1)).toBe(0);
    expect(suddenExpansion(0)).toBe(1);
  });
});
