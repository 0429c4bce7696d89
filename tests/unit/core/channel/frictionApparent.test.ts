import { describe, expect, test } from 'vitest';
import { frictionApparent } from '../../../../src/core/channel/frictionApparent.ts';

describe('frictionApparent', () => {
  test('a long channel knows only its developed friction', () => {
    expect(frictionApparent(1e9, 19)).toBeCloseTo(19, 6);
  });

  test('a short one knows only its entrance', () => {
    expect(frictionApparent(1e-9, 19) * Math.sqrt(1e-9)).toBeCloseTo(3.44, 6);
  });
});
