import { describe, expect, test } from 'vitest';
import { nusseltDevelopedT } from '../../../../src/core/channel/nusseltDevelopedT.ts';
import { nusseltDevelopedThreeWalls } from '../../../../src/core/channel/nusseltDevelopedThreeWalls.ts';

describe('nusseltDevelopedThreeWalls', () => {
  test('the cap does not matter where the fins are endlessly high', () => {
    expect(nusseltDevelopedThreeWalls(0)).toBeCloseTo(nusseltDevelopedT(0), 3);
  });

  test('the heated walls do better than four of them at every aspect between', () => {
    for (let aspect = 0.02; aspect <= 1; aspect += 0.02) {
      expect(nusseltDevelopedThreeWalls(aspect)).toBeGreaterThan(nusseltDevelopedT(aspect));
    }
  });
});
