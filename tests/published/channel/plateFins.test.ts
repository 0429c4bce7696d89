import { describe, test } from 'vitest';
import { channelNusselt, prepareNusselt } from '../../../src/core/channel/channelNusselt.ts';
import { nusseltPlateFinInletBasis } from '../../../src/core/channel/nusseltPlateFinInletBasis.ts';
import { nusseltPlatesDeveloping } from '../../../src/core/channel/nusseltPlatesDeveloping.ts';
import { published } from '../../helpers/published.ts';

// On the basis of the entering air, Pr 0.71.
const rows: [number, number, number][] = [
  // Re*, solution, published composite
  [1, 0.355, 0.3525],
  [3, 1.0371, 1.001],
  [5, 1.5866, 1.5293],
  [10, 2.4673, 2.421],
  [20, 3.4233, 3.4305],
  [50, 5.0422, 5.1161],
  [100, 6.8177, 6.9038],
  [200, 9.3063, 9.3891],
];

/** Nusselt number on the gap and the entering air from one on the hydraulic diameter and the mean difference. */
function onEnteringAir(reynoldsStar: number, logMean: number): number {
  const carry = 0.5 * reynoldsStar * 0.71;
  return carry * -Math.expm1(-(0.5 * logMean) / carry);
}

describe('Plate fins on the entering air', () => {
  const solved = (methods: string[]) =>
    published({
      source: 'ownComputation',
      where: 'boundary-layer solution on the entering air',
      kind: 'computed elsewhere',
      methods,
    });
  const again = published({
    source: 'teertstra2000',
    where: 'the published composite in a separate program',
    kind: 'worked again',
    methods: ['nusseltPlateFinInletBasis'],
  });

  test.each(rows)('Re* %d: solution %f, composite %f', (reynoldsStar, solution, composite) => {
    const found = nusseltPlateFinInletBasis(reynoldsStar, 0.71);
    again.says('Nusselt number', found, composite.toFixed(4));
    solved(['nusseltPlateFinInletBasis']).says('Nusselt number', found, String(solution), {
      within: 0.037,
      because: 'known error of the composite',
    });
  });

  test.each(rows)(
    'Re* %d: the plates table, its air warming up, gives the same %f',
    (reynoldsStar, solution) => {
      const xStar = 1 / (4 * reynoldsStar * 0.71);
      const found = onEnteringAir(reynoldsStar, nusseltPlatesDeveloping(xStar));
      solved(['nusseltPlatesDeveloping']).says('Nusselt number by the table', found, String(solution), {
        within: 0.006,
        because: 'two marching computations with different steps',
      });
    },
  );

  test.each(rows)(
    'Re* %d: so does the channel of the solver, between plates: %f',
    (reynoldsStar, solution) => {
      const hydraulic = 2e-4 / (1 + 1e-4);
      const xStar = 1 / (4 * reynoldsStar * 0.71);
      const channel = prepareNusselt(1e-4, 1, xStar * hydraulic);
      const found = onEnteringAir(reynoldsStar, channelNusselt(channel, 1 / 0.71, 0.71));
      solved(['nusseltDeveloping']).says('Nusselt number of the solver', found, String(solution), {
        within: 0.08,
        because: 'error of the laminar composite',
      });
    },
  );
});
