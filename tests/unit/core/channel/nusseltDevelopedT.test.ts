import { describe, expect, test } from 'vitest';
import { nusseltDevelopedT } from '../../../../src/core/channel/nusseltDevelopedT.ts';

describe('nusseltDevelopedT', () => {
  test('is that of plates where the slot is endless', () => expect(nusseltDevelopedT(0)).toBe(7.541));

  test('falls towards the square', () => {
    for (let aspect = 0; aspect < 0.9; aspect += 0.05) {
      expect(nusseltDevelopedT(aspect + 0.05)).toBeLessThan(nusseltDevelopedT(aspect));
    }
  });
});
