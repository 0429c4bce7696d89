import { describe, expect, test } from 'vitest';
import { airProperties } from '../../../../src/core/air/airProperties.ts';
import { fansStopped, ordinaryRun, type Run, type SystemInput } from '../../../../src/core/system/input.ts';
import { leavingShare, prepareWork, spreadAir, type Work } from '../../../../src/core/system/work.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const base = sampleInput(3);
const linksOf = (work: Work) =>
  work.path.links.map((link, i) => ({ ...link, lift: work.flow.lift[i] as number }));

/** Work whose sinks, gaps and exhaust are as warm as told, spread over the links. */
function warmed(run: Run, sink_K: number, gap_K: number, exhaust_K: number, input: SystemInput = base): Work {
  const work = prepareWork(input, run);
  for (const air of work.inSink) airProperties(air, sink_K, work.p_Pa, work.moist);
  airProperties(work.gap, gap_K, work.p_Pa, work.moist);
  airProperties(work.exhaust, exhaust_K, work.p_Pa, work.moist);
  spreadAir(work);
  return work;
}

describe('prepareWork', () => {
  test('scales watts by the scale and volts by its root, one and the same load', () => {
    const scaled = { ...base, load: { ...base.load, scale: 2 } };
    expect(prepareWork(scaled, ordinaryRun).power_W).toEqual([6, 6, 6]);
    const onVolts: SystemInput = { ...base, load: { ...base.load, excitation: 'parallelVolts', supply: 5 } };
    const once = prepareWork(onVolts, ordinaryRun);
    const twice = prepareWork({ ...onVolts, load: { ...onVolts.load, scale: 2 } }, ordinaryRun);
    twice.power_W.forEach((watts, r) => {
      expect(watts).toBeCloseTo(2 * (once.power_W[r] as number), 12);
    });
    expect(twice.load.voltage_V[0]).toBeCloseTo(Math.SQRT2 * (once.load.voltage_V[0] as number), 12);
  });

  test('takes the barometer before the altitude', () => {
    const high = { ...base, room: { ...base.room, altitude_m: 3000 } };
    expect(prepareWork(high, ordinaryRun).p_Pa).toBeCloseTo(70108.5, 0); // standard atmosphere
    expect(prepareWork({ ...high, room: { ...high.room, pressure_Pa: 98_000 } }, ordinaryRun).p_Pa).toBe(
      98_000,
    );
  });

  test('fans that do not turn warm nothing', () => {
    expect(prepareWork(base, ordinaryRun).fan_W).toBe(2.4);
    expect(prepareWork(base, fansStopped).fan_W).toBe(0);
  });
});

describe('spreadAir', () => {
  test('nothing lifts where everything is as warm as the room', () => {
    for (const { lift } of linksOf(warmed(fansStopped, 298.15, 298.15, 298.15)))
      expect(Math.abs(lift)).toBeLessThan(1e-12);
  });

  test('warm air lifts over its own height: a sink over its length, the exhaust over the headroom', () => {
    const work = warmed(fansStopped, 350, 320, 330);
    const lift = (rho: number, height_m: number) => (work.room.rho_kgPerM3 - rho) * 9.80665 * height_m;
    for (const link of linksOf(work)) {
      if (link.passage?.kind === 'fins')
        expect(link.lift).toBeCloseTo(lift((work.inSink[0] as Work['room']).rho_kgPerM3, 25e-3), 12);
      else if (link.passage?.kind === 'side' || link.passage?.kind === 'end')
        expect(link.lift).toBeCloseTo(lift(work.gap.rho_kgPerM3, 25e-3), 12);
      else if (link.stage === 'outlet')
        expect(link.lift).toBeCloseTo(lift(work.exhaust.rho_kgPerM3, 10e-3), 12);
      else expect(link.lift).toBe(0);
    }
  });

  test('turned over, the same air draws the other way', () => {
    const up = linksOf(warmed(fansStopped, 350, 320, 330));
    const down = linksOf(
      warmed(fansStopped, 350, 320, 330, { ...base, box: { ...base.box, tilt_rad: Math.PI } }),
    );
    up.forEach(({ lift }, i) => {
      expect(down[i]?.lift).toBeCloseTo(-lift, 12);
    });
  });

  test('where air comes in from above, warm air stands in the plenum and the room’s above the bank', () => {
    const work = prepareWork(base, fansStopped);
    work.reversed = true;
    airProperties(work.exhaust, 340, work.p_Pa, work.moist);
    spreadAir(work);
    work.path.links.forEach(({ air }, i) => {
      const rho = work.flow.rho[i] as number;
      if (air === 'exhaust') expect(rho).toBe(work.room.rho_kgPerM3);
      if (air === 'plenum' || air === 'room') expect(rho).toBe(work.exhaust.rho_kgPerM3);
    });
  });
});

describe('leavingShare', () => {
  function withFlows(whole: number, passages: (index: number) => number): Work {
    const work = prepareWork(base, fansStopped);
    work.flow.massFlow.fill(whole);
    let index = 0;
    work.path.links.forEach(({ passage }, i) => {
      if (passage) work.flow.massFlow[i] = passages(index++);
    });
    return work;
  }

  test('is all of it where every passage goes the way of the whole', () => {
    const count = prepareWork(base, fansStopped).path.links.filter(({ passage }) => passage).length;
    expect(leavingShare(withFlows(8, () => 8 / count))).toBeCloseTo(1, 12);
    expect(leavingShare(withFlows(-8, () => -8 / count))).toBeCloseTo(-1, 12);
  });

  test('is a part where some of what goes up comes down again inside', () => {
    // 3 up, 1 down again, 2 leave: of what goes up two thirds.
    const flows = [3, -1];
    expect(leavingShare(withFlows(2, (index) => flows[index] ?? 0))).toBeCloseTo(2 / 3, 12);
    expect(leavingShare(withFlows(-2, (index) => -(flows[index] ?? 0)))).toBeCloseTo(-2 / 3, 12);
  });

  test('is none where all of it goes round, and no number is lost where nothing moves', () => {
    expect(leavingShare(withFlows(0, (index) => [1, -1][index] ?? 0))).toBe(0);
    expect(leavingShare(withFlows(0, () => 0))).toBe(1);
  });
});
