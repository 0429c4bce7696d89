import { describe, test } from 'vitest';
import { nusseltDevelopedH1 } from '../../../src/core/channel/nusseltDevelopedH1.ts';
import { nusseltDevelopedT } from '../../../src/core/channel/nusseltDevelopedT.ts';
import { nusseltDevelopedThreeWalls } from '../../../src/core/channel/nusseltDevelopedThreeWalls.ts';
import { published } from '../../helpers/published.ts';

describe('Developed heat transfer of rectangular channels', () => {
  const collocation = published({
    source: 'ownComputation',
    where: 'Chebyshev collocation of profile and eigenvalue problem, N = 30',
    kind: 'computed elsewhere',
    methods: ['nusseltDevelopedH1', 'nusseltDevelopedT', 'nusseltDevelopedThreeWalls'],
  });

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
    collocation.says('Nusselt number, H1', nusseltDevelopedH1(aspect), String(h1), {
      within: 9e-4,
      because: 'the fit’s error is stated as 0.08 %',
    });
    collocation.says('Nusselt number, T', nusseltDevelopedT(aspect), String(t), {
      within: 4.4e-3,
      because: 'the fit’s error is stated as 0.43 %',
    });
    collocation.says(
      'Nusselt number, one short wall without heat',
      nusseltDevelopedThreeWalls(aspect),
      capped.toFixed(4),
    );
  });

  test('plates: 8.235 and 7.5407', () => {
    collocation.says('Nusselt number, H1', nusseltDevelopedH1(0), '8.235');
    collocation.says('Nusselt number, T', nusseltDevelopedT(0), '7.541');
    collocation.says('Nusselt number, one short wall without heat', nusseltDevelopedThreeWalls(0), '7.5407');
  });
});

test('Nu_H1 at an aspect of 0.7 is 3.75176', () => {
  const library = published({
    source: 'shahLondon1978',
    where: 'documentation of the Python library ht: the same polynomial',
    kind: 'worked again',
    methods: ['nusseltDevelopedH1'],
  });
  library.says('Nusselt number, H1', nusseltDevelopedH1(0.7), '3.75176');
});
