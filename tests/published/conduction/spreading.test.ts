import { describe, test } from 'vitest';
import { prepareSpreading, spreadingPeak_KPerW } from '../../../src/core/conduction/spreadingLee.ts';
import { spreadingMean_KPerW } from '../../../src/core/conduction/spreadingMean_KPerW.ts';
import { spreadingSeriesMean_KPerW } from '../../../src/core/conduction/spreadingSeriesMean_KPerW.ts';
import { spreadingSeriesPeak_KPerW } from '../../../src/core/conduction/spreadingSeriesPeak_KPerW.ts';
import { published } from '../../helpers/published.ts';

const mm = 1e-3;

const summed = (methods: string[]) =>
  published({
    source: 'ownComputation',
    where: 'series summed in a separate program; the total also by finite volumes, within 0.15 %',
    kind: 'computed elsewhere',
    methods,
  });
const lee = published({
  source: 'lee1995',
  where: 'the closed form in a separate program',
  kind: 'worked again',
  methods: ['spreadingMean', 'spreadingPeak'],
});
const [mean, peak] = ['spreading resistance, mean [K/W]', 'spreading resistance, peak [K/W]'];
const waves = { within: 0.0005, because: 'that program stops at 200 waves for some rows' };

const cases = [
  {
    k: 200,
    plate: [40, 40, 3],
    source: [10, 10],
    h: 1000,
    mean: 0.27256,
    peak: 0.34085,
    lee: [0.25846, 0.33676],
  },
  {
    k: 200,
    plate: [40, 40, 3],
    source: [10, 10],
    h: 200,
    mean: 0.28048,
    peak: 0.35003,
    lee: [0.26274, 0.34233],
  },
  {
    k: 200,
    plate: [25, 25, 2],
    source: [6.25, 3.125],
    h: 500,
    mean: 0.59819,
    peak: 0.71794,
    lee: [0.58844, 0.73181],
  },
  {
    k: 390,
    plate: [60, 60, 5],
    source: [15, 15],
    h: 2000,
    mean: 0.08552,
    peak: 0.10701,
    lee: [0.08161, 0.10634],
  },
  {
    k: 180,
    plate: [30, 30, 1.5],
    source: [6, 3],
    h: 300,
    mean: 0.9427,
    peak: 1.10567,
    lee: [0.92662, 1.12841],
  },
] as const;

describe.each(cases)('Plate $plate mm, source $source mm, k $k W/mK, h $h W/m²K', (given) => {
  const [plateLength, plateWidth, thickness] = given.plate;
  const [sourceLength, sourceWidth] = given.source;
  const exact = {
    sourceLength_m: sourceLength * mm,
    sourceWidth_m: sourceWidth * mm,
    plateLength_m: plateLength * mm,
    plateWidth_m: plateWidth * mm,
    thickness_m: thickness * mm,
    k_WPerMK: given.k,
    h_WPerM2K: given.h,
  };
  const spreading = prepareSpreading(
    exact.sourceLength_m * exact.sourceWidth_m,
    exact.plateLength_m * exact.plateWidth_m,
    exact.thickness_m,
  );
  const leePeak_KPerW = spreadingPeak_KPerW(spreading, given.k, given.h);
  const leeMean_KPerW = spreadingMean_KPerW(spreading, given.k, given.h);

  test('the series gives the mean of a separate summation', () => {
    const found = spreadingSeriesMean_KPerW(exact);
    summed(['spreadingSeriesMean']).says(mean, found, String(given.mean), waves);
  });

  test('the series gives the peak of a separate summation', () => {
    const found = spreadingSeriesPeak_KPerW(exact);
    summed(['spreadingSeriesPeak']).says(peak, found, String(given.peak), waves);
  });

  test('the closed form gives the digits of a separate computation', () => {
    lee.says(mean, leeMean_KPerW, given.lee[0].toFixed(5));
    lee.says(peak, leePeak_KPerW, given.lee[1].toFixed(5));
  });

  test('the closed form stays as close to the exact value as was found for these cases', () => {
    summed(['spreadingMean']).says(mean, leeMean_KPerW, String(given.mean), {
      within: 0.064,
      because: 'closed form for a series, found −6.3 … −1.6 %',
    });
    summed(['spreadingPeak']).says(peak, leePeak_KPerW, String(given.peak), {
      within: 0.023,
      because: 'closed form for a series, found −2.2 … +2.1 %',
    });
  });
});

// k·√A·R = 0.47320 − 0.62075 ε + 0.1198 ε³, square on a long square tube.
describe('Square source on a long square flux tube', () => {
  const negus = published({
    source: 'Negus, Yovanovich & Beck 1989',
    where: 'square source on a square flux tube',
    kind: 'from memory',
    methods: ['spreadingSeriesMean'],
  });
  const carslaw = published({
    source: 'carslawJaeger1959',
    where: 'square on a half space, peak above mean',
    kind: 'from memory',
    methods: ['spreadingSeriesPeak'],
  });

  test.each([0.1, 0.2, 0.3])('side ratio %f gives the published constriction', (ratio) => {
    const constriction = 0.4732 - 0.62075 * ratio + 0.1198 * ratio ** 3;
    const exact = spreadingSeriesMean_KPerW({
      sourceLength_m: ratio,
      sourceWidth_m: ratio,
      plateLength_m: 1,
      plateWidth_m: 1,
      thickness_m: 5,
      k_WPerMK: 1,
      h_WPerM2K: 1,
    });
    negus.says('constriction k·√A·R', exact * ratio, constriction.toPrecision(6), {
      within: 5e-4,
      because: 'fit and 400 waves',
    });
  });

  // Carslaw & Jaeger: a square on a half space has k·√A·R = 2·ln(1 + √2)/π in its middle; the tube takes the same off
  // peak and mean, since its walls are far from a small source.
  test('a small source stands as far above its mean as on a half space', () => {
    const ratio = 0.1;
    const tube = {
      sourceLength_m: ratio,
      sourceWidth_m: ratio,
      plateLength_m: 1,
      plateWidth_m: 1,
      thickness_m: 5,
      k_WPerMK: 1,
      h_WPerM2K: 1,
    };
    const above = (spreadingSeriesPeak_KPerW(tube) - spreadingSeriesMean_KPerW(tube)) * ratio;
    const onHalfSpace = (2 * Math.log(1 + Math.SQRT2)) / Math.PI - 0.4732;
    carslaw.says('peak above mean, k·√A·R', above, onHalfSpace.toFixed(6), {
      off: 0.001,
      because: 'the tube’s walls bend the difference by about ε³',
    });
  });
});
