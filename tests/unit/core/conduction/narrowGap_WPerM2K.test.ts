import { describe, expect, test } from 'vitest';
import { narrowGap_WPerM2K } from '../../../../src/core/conduction/narrowGap_WPerM2K.ts';

describe('narrowGap_WPerM2K', () => {
  test('from wall to wall is plain conduction: the two halves in a row', () => {
    const half = narrowGap_WPerM2K(0.026, 2e-3);
    expect(1 / (1 / half + 1 / half)).toBeCloseTo(0.026 / 2e-3, 12);
  });

  test('is a Nusselt number of 4 on twice the gap', () => {
    expect((narrowGap_WPerM2K(0.03, 1e-3) * 2 * 1e-3) / 0.03).toBeCloseTo(4, 12);
  });

  test('grows as the gap closes', () => {
    expect(narrowGap_WPerM2K(0.026, 1e-3) / narrowGap_WPerM2K(0.026, 3e-3)).toBeCloseTo(3, 12);
  });
});
