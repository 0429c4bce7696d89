import { describe, expect, test } from 'vitest';
import { channelEmissivity } from '../../../src/core/radiation/channelEmissivity.ts';
import { channelEmissivityGroove } from '../../../src/core/radiation/channelEmissivityGroove.ts';
import { channelEmissivityQuick } from '../../../src/core/radiation/channelEmissivityQuick.ts';

// Groove radiosity with crossed strings and 360 strips in a separate program.
describe.each([
  { emissivity: 0.1, fin: 20, gap: 3.9, printed: 0.482 },
  { emissivity: 0.1, fin: 10, gap: 5, printed: 0.347 },
  { emissivity: 0.8, fin: 20, gap: 3.9, printed: 0.95 },
  { emissivity: 0.05, fin: 20, gap: 4, printed: 0.329 },
  { emissivity: 0.9, fin: 10, gap: 5, printed: 0.972 },
])('ε $emissivity, fins $fin mm, gap $gap mm', ({ emissivity, fin, gap, printed }) => {
  test('the groove of strips gives the printed apparent emissivity', () => {
    expect(channelEmissivityGroove(emissivity, fin / gap)).toBeCloseTo(printed, 3);
  });

  test('the closed form is within its 1.2 %', () => {
    const within = 0.012 * printed + 0.0005; // the fit, and the printed digits
    expect(Math.abs(channelEmissivity(emissivity, fin / gap) - printed)).toBeLessThan(within);
  });
});

// The quick form worked by hand: it overstates deep channels.
describe('Evenly lit walls', () => {
  test.each([
    [0.1, 20, 3.9, 0.556],
    [0.1, 10, 5, 0.357],
    [0.05, 20, 4, 0.367],
  ])('ε %f, fins %f mm, gap %f mm give %f, above the groove', (emissivity, fin, gap, printed) => {
    const quick = channelEmissivityQuick(emissivity, fin / gap);
    expect(quick).toBeCloseTo(printed, 3);
    expect(quick).toBeGreaterThan(channelEmissivityGroove(emissivity, fin / gap));
  });
});
