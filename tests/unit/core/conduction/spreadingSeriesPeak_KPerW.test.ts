import { expect, test } from 'vitest';
import { seriesExample } from '../../../../src/core/conduction/spreadingSeries_KPerW.ts';
import { spreadingSeriesMean_KPerW } from '../../../../src/core/conduction/spreadingSeriesMean_KPerW.ts';
import { spreadingSeriesPeak_KPerW } from '../../../../src/core/conduction/spreadingSeriesPeak_KPerW.ts';

test('the middle of a source is warmer than its mean', () => {
  expect(spreadingSeriesPeak_KPerW(seriesExample)).toBeGreaterThan(spreadingSeriesMean_KPerW(seriesExample));
});
