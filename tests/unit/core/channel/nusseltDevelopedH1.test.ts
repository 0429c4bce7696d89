import { describe, expect, test } from 'vitest';
import { nusseltDevelopedH1 } from '../../../../src/core/channel/nusseltDevelopedH1.ts';
import { nusseltDevelopedT } from '../../../../src/core/channel/nusseltDevelopedT.ts';

describe('nusseltDevelopedH1', () => {
  test('is 140/17 between plates', () => {
    const within = 5e-4; // the fit's leading constant is printed with four digits
    expect(Math.abs(nusseltDevelopedH1(0) - 140 / 17)).toBeLessThan(within);
  });

  test('even heat gives more than even temperature at every aspect', () => {
    for (let aspect = 0; aspect <= 1; aspect += 0.05) {
      expect(nusseltDevelopedH1(aspect)).toBeGreaterThan(nusseltDevelopedT(aspect));
    }
  });
});
