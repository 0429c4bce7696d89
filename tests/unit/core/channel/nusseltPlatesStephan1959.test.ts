import { describe, expect, test } from 'vitest';
import { nusseltPlatesStephan1959 } from '../../../../src/core/channel/nusseltPlatesStephan1959.ts';

describe('nusseltPlatesStephan1959', () => {
  test('tends to 7.55 in a long channel', () =>
    expect(nusseltPlatesStephan1959(1e6, 0.71)).toBeCloseTo(7.55, 5));

  test('a fluid whose velocity develops first gains less at the same x*', () => {
    expect(nusseltPlatesStephan1959(1e-3, 100)).toBeLessThan(nusseltPlatesStephan1959(1e-3, 0.71));
  });
});
