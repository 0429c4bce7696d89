import { describe, expect, test } from 'vitest';
import { channelEmissivity } from '../../../src/core/radiation/channelEmissivity.ts';
import { channelEmissivityGroove } from '../../../src/core/radiation/channelEmissivityGroove.ts';
import { channelEmissivityQuick } from '../../../src/core/radiation/channelEmissivityQuick.ts';
import { published } from '../../helpers/published.ts';

const strips = (methods: string[]) =>
  published({
    source: 'ownComputation',
    where: 'groove radiosity with crossed strings and 360 strips in a separate program',
    kind: 'computed elsewhere',
    methods,
  });
const quantity = 'apparent emissivity';

describe.each([
  { emissivity: 0.1, fin: 20, gap: 3.9, printed: 0.482 },
  { emissivity: 0.1, fin: 10, gap: 5, printed: 0.347 },
  { emissivity: 0.8, fin: 20, gap: 3.9, printed: 0.95 },
  { emissivity: 0.05, fin: 20, gap: 4, printed: 0.329 },
  { emissivity: 0.9, fin: 10, gap: 5, printed: 0.972 },
])('ε $emissivity, fins $fin mm, gap $gap mm', ({ emissivity, fin, gap, printed }) => {
  test('the groove of strips gives the printed apparent emissivity', () => {
    const found = channelEmissivityGroove(emissivity, fin / gap);
    strips(['channelEmissivityGroove']).says(quantity, found, printed.toFixed(3));
  });

  test('the closed form is within its 1.2 %', () => {
    const found = channelEmissivity(emissivity, fin / gap);
    strips(['channelEmissivity']).says(quantity, found, printed.toFixed(3), {
      off: 0.012 * printed + 0.0005,
      because: 'the fit, 1.2 %, and the printed digits',
    });
  });
});

// The quick form overstates deep channels.
describe('Evenly lit walls', () => {
  const hand = published({
    source: 'siegelHowell',
    where: 'the quick form worked by hand',
    kind: 'worked again',
    methods: ['channelEmissivityQuick'],
  });

  test.each([
    [0.1, 20, 3.9, 0.556],
    [0.1, 10, 5, 0.357],
    [0.05, 20, 4, 0.367],
  ])('ε %f, fins %f mm, gap %f mm give %f, above the groove', (emissivity, fin, gap, printed) => {
    const quick = channelEmissivityQuick(emissivity, fin / gap);
    hand.says(quantity, quick, printed.toFixed(3));
    expect(quick).toBeGreaterThan(channelEmissivityGroove(emissivity, fin / gap));
  });
});
