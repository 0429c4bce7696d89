import { expect, test } from 'vitest';
import { seriesExample } from '../../../../src/core/conduction/spreadingSeries_KPerW.ts';
import { spreadingSeriesMean_KPerW } from '../../../../src/core/conduction/spreadingSeriesMean_KPerW.ts';

test('a larger source on the same plate spreads less', () => {
  const larger = { ...seriesExample, sourceLength_m: 20e-3, sourceWidth_m: 20e-3 };
  expect(spreadingSeriesMean_KPerW(larger, 100)).toBeLessThan(spreadingSeriesMean_KPerW(seriesExample, 100));
});
