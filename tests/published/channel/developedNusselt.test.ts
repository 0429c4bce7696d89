import { describe, expect, test } from 'vitest';
import { nusseltDevelopedH1 } from '../../../src/core/channel/nusseltDevelopedH1.ts';
import { nusseltDevelopedT } from '../../../src/core/channel/nusseltDevelopedT.ts';
import { nusseltDevelopedThreeWalls } from '../../../src/core/channel/nusseltDevelopedThreeWalls.ts';

// Independent computation: Chebyshev collocation of profile and eigenvalue problem, N = 30.
describe('Developed heat transfer of rectangular channels', () => {
  test.each([
    // aspect, H1 four walls, T four walls, T with one short wall without heat
    [1, 3.608, 2.9775, 3.0246],
    [0.5, 4.1233, 3.3923, 3.8735],
    [1 / 3, 4.7948, 3.9577, 4.4631],
    [0.25, 5.3311, 4.4405, 4.9096],
    [0.2, 5.7377, 4.8283, 5.2554],
    [1 / 6, 6.0495, 5.1383, 5.5269],
    [0.125, 6.4904, 5.5937, 5.92],
    [0.1, 6.785, 5.9078, 6.1878],
    [0.05, 7.451, 6.6413, 6.8031],
  ])('aspect %f: Nu_H1 %f, Nu_T %f, capped %f', (aspect, h1, t, capped) => {
    expect(Math.abs(nusseltDevelopedH1(aspect) / h1 - 1)).toBeLessThan(9e-4); // the fit's error is stated as 0.08 %
    expect(Math.abs(nusseltDevelopedT(aspect) / t - 1)).toBeLessThan(4.4e-3); // the fit's error is stated as 0.43 %
    expect(nusseltDevelopedThreeWalls(aspect)).toBeCloseTo(capped, 4);
  });

  test('plates: 8.235 and 7.5407', () => {
    expect(nusseltDevelopedH1(0)).toBeCloseTo(8.235, 3);
    expect(nusseltDevelopedT(0)).toBeCloseTo(7.541, 3);
    expect(nusseltDevelopedThreeWalls(0)).toBeCloseTo(7.5407, 4);
  });
});

// Documentation of the Python library ht: the same polynomial.
test('Nu_H1 at an aspect of 0.7 is 3.75176', () => expect(nusseltDevelopedH1(0.7)).toBeCloseTo(3.75176, 5));
