import { describe, test } from 'vitest';
import { brentRoot } from '../../../src/core/solve/brentRoot.ts';
import { chiSquareTail } from '../../../src/core/solve/chiSquareTail.ts';
import { published } from '../../helpers/published.ts';

const table = published({
  source: 'Abramowitz & Stegun 1964, Handbook of Mathematical Functions',
  where: 'table 26.8, percentage points of χ²',
  kind: 'from memory',
});

const points: readonly (readonly [degrees: number, chance: number, printed: string])[] = [
  [1, 0.05, '3.841'],
  [2, 0.05, '5.991'],
  [5, 0.05, '11.07'],
  [10, 0.05, '18.31'],
  [30, 0.05, '43.77'],
  [5, 0.01, '15.09'],
  [10, 0.95, '3.94'],
];

describe('percentage points of χ²', () => {
  test.each(points)('%i degrees, %f', (degrees, chance, printed) => {
    const found = brentRoot((value) => chiSquareTail(value, degrees) - chance, 0.1, 100, 1e-9);
    table.says('percentage point', found.ok ? found.root : Number.NaN, printed);
  });
});
