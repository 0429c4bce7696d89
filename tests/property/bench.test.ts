import { beforeAll, describe, expect, test } from 'vitest';
import { hash32 } from '../../src/core/solve/hash32.ts';
import type { Design } from '../../src/model/design.ts';
import { benchFit } from '../../src/studies/bench/fit.ts';
import type { BenchFitResult, Unknown } from '../../src/studies/bench/types.ts';
import {
  asDesigned,
  fanStopped,
  flow,
  pairWith,
  pressure,
  readFrom,
  temperature,
  withLessFan,
} from '../helpers/bench.ts';

/** What the prototype is in truth, and the design does not know. */
const truth: Readonly<Record<Unknown, number>> = {
  bond: 0.8,
  leak: 0.0004,
  slot: 1.3,
  fan: 0.9,
  emissivity: 0.7,
};

function prototypeOf(design: Design, unknowns: readonly Unknown[]): Design {
  const of = (unknown: Unknown, otherwise: number) =>
    unknowns.includes(unknown) ? truth[unknown] : otherwise;
  return {
    ...design,
    baffle: { ...design.baffle, leakGap_m: of('leak', design.baffle.leakGap_m) },
    fitted: {
      ...design.fitted,
      bondFactor: of('bond', 1),
      slotFactor: of('slot', 1),
      fanFactor: of('fan', 1),
      emissivityFactor: of('emissivity', 1),
    },
  };
}

const seed = 20261128;
const cases = 200;

const sets: readonly { unknowns: readonly Unknown[]; design: Design }[] = [
  {
    unknowns: ['bond', 'fan'],
    design: pairWith({
      temperatures: [
        temperature('onFilm', asDesigned),
        temperature('onTerminal', asDesigned),
        temperature('onFilm', withLessFan),
      ],
      pressures: [pressure(asDesigned), pressure(withLessFan)],
      flows: [flow(asDesigned)],
    }),
  },
  {
    unknowns: ['bond', 'leak', 'slot'],
    design: pairWith({
      temperatures: [
        temperature('onFilm', asDesigned),
        temperature('onTerminal', asDesigned),
        temperature('onSink', fanStopped),
        temperature('inExhaust', fanStopped),
      ],
      pressures: [pressure(asDesigned), pressure(withLessFan)],
      flows: [flow(asDesigned), flow(withLessFan)],
    }),
  },
  {
    unknowns: ['emissivity'],
    design: pairWith({
      temperatures: [
        temperature('onFilm', fanStopped),
        temperature('onSink', fanStopped),
        temperature('onSheet', fanStopped),
      ],
    }),
  },
];

// Source of the truth: the prototype itself, invented; the stated interval is to hold it 95 times in a hundred.
describe.each(sets)('readings of a known prototype, $unknowns fitted', ({ unknowns, design }) => {
  const prototype = prototypeOf(design, unknowns);
  let fits: BenchFitResult[] = [];
  beforeAll(() => {
    fits = Array.from({ length: cases }, (_, i) => {
      const readings = readFrom(prototype, design, hash32(seed, i));
      return benchFit({ design: { ...design, readings }, unknowns });
    });
  });

  test('none is refused', () => {
    expect(fits.map(({ refused }) => refused).filter(Boolean)).toEqual([]);
  });

  test.each(unknowns)('the stated 95 %% hold %s in 95 ± 3 of a hundred', (unknown) => {
    const holding = fits.filter(({ values }) =>
      values.some((v) => v.unknown === unknown && v.low <= truth[unknown] && truth[unknown] <= v.high),
    );
    const share = (100 * holding.length) / cases;
    expect(share).toBeGreaterThanOrEqual(92);
    expect(share).toBeLessThanOrEqual(98);
  });

  test('readings scatter as their instruments say: chance by chance, one in twenty looks improbable', () => {
    const improbable = fits.filter(({ birge }) => birge > 1).length / cases;
    expect(improbable).toBeLessThan(0.1);
    const mean = fits.reduce((sum, { after }) => sum + after.value / after.degrees, 0) / cases;
    expect(mean).toBeGreaterThan(0.85);
    expect(mean).toBeLessThan(1.15);
  });

  test('exact readings give back the truth', () => {
    const exact = benchFit({ design: { ...design, readings: readFrom(prototype, design, null) }, unknowns });
    for (const { unknown, value } of exact.values) expect(value / truth[unknown]).toBeCloseTo(1, 4);
    expect(exact.after.value).toBeLessThan(1e-4);
  });
});
