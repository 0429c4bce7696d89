import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fansStopped, leastFlow, ordinaryRun, type SystemInput } from '../../src/core/system/input.ts';
import type { Solved } from '../../src/core/system/outcome.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { sampleInput } from '../helpers/sampleInput.ts';
import { dippingFan, solved, withFan } from '../helpers/solved.ts';

const settings = { seed: 20261125, numRuns: 60 } as const;

function stopped(input: SystemInput): Solved {
  const outcome = solveSystem(input, fansStopped);
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome;
}

const hottest = ({ heat }: Solved) => heat.positions[heat.hottest]?.film_K ?? 0;
const boxed = (over: Partial<SystemInput['box']>, power_W = 1) => {
  const base = sampleInput(4, power_W);
  return { ...base, box: { ...base.box, ...over } };
};

describe('with the fans stopped', () => {
  test('the draught goes to nothing with the watts, without a jump', () => {
    // Beyond about 3 W each the air grows so hot and thick that more watts move less of it.
    let before = stopped(sampleInput(4, 2)).air.massFlow_kgPerS;
    for (let power_W = 1; power_W > 1e-9; power_W /= 2) {
      const now = stopped(sampleInput(4, power_W)).air.massFlow_kgPerS;
      expect(now).toBeLessThan(before);
      expect(now / before).toBeGreaterThan(0.45); // at most in proportion
      before = now;
    }
    expect(before).toBeLessThan(1e-11);
    expect(stopped(sampleInput(4, 0)).air.massFlow_kgPerS).toBe(0);
  });

  test('more watts are hotter, and draw more air', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 2, noNaN: true }), (power_W) => {
        const less = stopped(sampleInput(4, power_W));
        const more = stopped(sampleInput(4, power_W * 1.1));
        expect(hottest(more)).toBeGreaterThan(hottest(less));
        expect(more.air.massFlow_kgPerS).toBeGreaterThan(less.air.massFlow_kgPerS);
      }),
      settings,
    );
  });

  test('heat that goes in comes out, and so does air', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 4, noNaN: true }),
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        (power_W, tilt_rad) => {
          const { balance, heat } = stopped(boxed({ tilt_rad }, power_W));
          expect(balance.air).toBeLessThan(1e-9);
          expect(balance.heat).toBeLessThan(1e-9);
          expect(heat.carried_W + heat.shell_W).toBeCloseTo(heat.total_W, 8);
        },
      ),
      settings,
    );
  });

  test('leaning makes it hotter, lying flat hottest, with no draught at all', () => {
    let before = 0;
    for (const degrees of [0, 20, 40, 60, 75, 85, 90]) {
      const film_K = hottest(stopped(boxed({ tilt_rad: (degrees * Math.PI) / 180 })));
      expect(film_K).toBeGreaterThan(before);
      before = film_K;
    }
    expect(stopped(boxed({ tilt_rad: Math.PI / 2 })).air.massFlow_kgPerS).toBe(0);
  });

  test('upside down the air comes in above and leaves by the fans', () => {
    const { air, heat } = stopped(boxed({ tilt_rad: Math.PI }));
    expect(air.massFlow_kgPerS).toBeLessThan(0);
    expect(heat.entering_K).toBe(heat.room_K);
    expect(heat.exhaust_K).toBeGreaterThan(heat.room_K);
  });

  test.each([
    [
      'duller sinks',
      (s: number): SystemInput => ({ ...boxed({}), sink: { ...boxed({}).sink, emissivity: 1 - s } }),
    ],
    ['a duller box', (s: number) => boxed({ sheetEmissivity: 1 - 0.9 * s })],
    ['a thicker box', (s: number) => boxed({ sheet_m: 1e-3 + 9e-3 * s })],
    [
      'blades more in the way',
      (s: number): SystemInput => ({ ...boxed({}), fan: { ...boxed({}).fan, standingLoss: 1 + 200 * s } }),
    ],
    [
      'a dustier guard',
      (s: number): SystemInput => ({
        ...boxed({}),
        inlet: { ...boxed({}).inlet, guard: { kind: 'punched', freeShare: 0.6, loss: 0, blocked: 0.9 * s } },
      }),
    ],
    ['a lower headroom', (s: number) => boxed({ headroom_m: 0.1 * (1 - s) })],
  ] satisfies [string, (share: number) => SystemInput][])('%s never cool', (_, make) => {
    let before = 0;
    for (const share of [0, 0.2, 0.4, 0.6, 0.8, 0.95]) {
      const film_K = hottest(stopped(make(share)));
      expect(film_K).toBeGreaterThan(before - 1e-5);
      before = film_K;
    }
  });

  test('it is hotter than with them, and a fan that turns ever slower comes near it', () => {
    const base = sampleInput(4, 1);
    const without = hottest(stopped(base));
    const at = (supply_V: number) =>
      hottest(solved({ ...base, fan: { ...base.fan, start_V: 0, supply_V, power_W: 0 } }));
    expect(at(12)).toBeLessThan(at(3));
    expect(at(3)).toBeLessThan(without);
  });
});

describe('fans together', () => {
  const base = sampleInput();
  const withFans = (sideBySide: number, inARow: number): SystemInput => ({
    ...base,
    fan: { ...base.fan, sideBySide, inARow },
  });

  test('more lanes move more air, more in a row press harder', () => {
    const flow = (lanes: number, rows: number) => solved(withFans(lanes, rows)).air.flow_m3PerS;
    for (const n of [1, 2, 3]) {
      expect(flow(n + 1, 1)).toBeGreaterThan(flow(n, 1));
      expect(flow(1, n + 1)).toBeGreaterThan(flow(1, n));
    }
  });

  test('two kinds that are alike do as two of one kind', () => {
    const other = { ...base.fan, name: 'the same' };
    for (const place of ['beside', 'behind'] as const) {
      const kinds = solved({ ...base, fan: { ...base.fan, others: [{ ...other, place }] } }).air;
      const two = solved(place === 'beside' ? withFans(2, 1) : withFans(1, 2)).air;
      // Guard area and neck follow the openings: of two kinds beside as of two lanes.
      expect(Math.abs(kinds.flow_m3PerS / two.flow_m3PerS - 1)).toBeLessThan(1e-3); // curves joined point by point
    }
  });

  test('every fan’s flow is its share of the whole', () => {
    const weak = { ...base.fan, name: 'weak', place: 'beside' as const, supply_V: 9 };
    const { air } = solved({ ...base, fan: { ...base.fan, sideBySide: 2, others: [weak] } });
    const sum = air.fans.reduce((total, fan) => total + fan.count * fan.flow_m3PerS, 0);
    expect(Math.abs(sum / air.flow_m3PerS - 1)).toBeLessThan(1e-6);
  });

  test('sag and age slow, and warm', () => {
    const worst = { ...base, load: { ...base.load, atWorst: true } };
    const sagging = { ...worst, fan: { ...worst.fan, supplySag: 0.1 } };
    const old = { ...worst, fan: { ...worst.fan, speedLoss: 0.1 } };
    for (const slow of [sagging, old]) {
      expect(solved(slow).air.flow_m3PerS).toBeLessThan(solved(worst).air.flow_m3PerS);
      expect(hottest(solved(slow))).toBeGreaterThan(hottest(solved(worst)));
    }
    expect(solved({ ...sagging, load: base.load }).air.flow_m3PerS).toBe(solved(base).air.flow_m3PerS);
  });

  test('from rest a fan with a dip settles at no more flow than from free delivery, and hotter', () => {
    const dipping = withFan(base, dippingFan);
    const low = solveSystem(dipping, leastFlow);
    const high = solveSystem(dipping, ordinaryRun);
    if (!low.ok || !high.ok) throw new Error('both settle');
    expect(low.air.flow_m3PerS).toBeLessThan(high.air.flow_m3PerS);
    expect(hottest(low)).toBeGreaterThan(hottest(high));
  });
});

describe('the room', () => {
  test('a barometer says the same as the altitude it stands at', () => {
    const base = sampleInput();
    const high = solved({ ...base, room: { ...base.room, altitude_m: 1500 } });
    const read = solved({ ...base, room: { ...base.room, pressure_Pa: high.air.p_Pa } });
    expect(read.air.p_Pa).toBe(high.air.p_Pa);
    expect(hottest(read)).toBeCloseTo(hottest(high), 9);
  });

  test('thin air: nearly the same volume, less mass, hotter parts', () => {
    const base = sampleInput();
    const low = solved(base);
    const high = solved({ ...base, room: { ...base.room, altitude_m: 3000 } });
    expect(high.air.flow_m3PerS / low.air.flow_m3PerS).toBeGreaterThan(0.93);
    expect(high.air.massFlow_kgPerS / low.air.massFlow_kgPerS).toBeLessThan(0.75);
    expect(hottest(high)).toBeGreaterThan(hottest(low));
  });

  test('the scale of a load is the scale of its watts', () => {
    const base = sampleInput();
    const half = solved({ ...base, load: { ...base.load, scale: 0.5 } });
    expect(half.heat.total_W).toBeCloseTo(solved(base).heat.total_W / 2, 12);
  });
});
