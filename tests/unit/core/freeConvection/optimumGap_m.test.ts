import { expect, test } from 'vitest';
import { nusseltChannelBarCohenRohsenow1984 } from '../../../../src/core/freeConvection/nusseltChannelBarCohenRohsenow1984.ts';
import { NUSSELT_AT_OPTIMUM_GAP, optimumGap_m } from '../../../../src/core/freeConvection/optimumGap_m.ts';

/** Heat of an array of thin plates over its width, in units that do not matter: h of a gap over the gap. */
const heatOfArray = (gap: number, Ra: number) => nusseltChannelBarCohenRohsenow1984(Ra * gap ** 4) / gap ** 2;

test.each([1e5, 1e6, 1e7])('at Rayleigh number %d no other gap moves more heat', (Ra) => {
  const gap = optimumGap_m(1, Ra);
  for (const other of [0.5, 0.8, 0.95, 1.05, 1.25, 2]) {
    expect(heatOfArray(gap * other, Ra)).toBeLessThan(heatOfArray(gap, Ra));
  }
});

test('its Nusselt number is that of the channel formula', () => {
  const gap = optimumGap_m(1, 1e6);
  const within = 0.002; // the text rounds 2.7155 to 2.714
  expect(
    Math.abs(nusseltChannelBarCohenRohsenow1984(1e6 * gap ** 4) / NUSSELT_AT_OPTIMUM_GAP - 1),
  ).toBeLessThan(within);
});
