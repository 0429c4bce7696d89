import { describe, expect, test } from 'vitest';
import { type ExtraLossInput, fansStopped, type SystemInput } from '../../../../src/core/system/input.ts';
import { solveSystem, systemCurves } from '../../../../src/core/system/solveSystem.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { dippingFan, solved, withFan } from '../../../helpers/solved.ts';

const base = sampleInput();
const films = (input: SystemInput) => solved(input).heat.positions.map((p) => p.film_K);
const hottest = (input: SystemInput) => Math.max(...films(input));
const withFace = (way: SystemInput['secondFace']['way'], input = base): SystemInput => ({
  ...input,
  secondFace: { ...input.secondFace, way },
});
const extra = (over: Partial<ExtraLossInput>): SystemInput => ({
  ...base,
  extras: [{ name: 'mesh', place: 'inlet', loss: 0, area_m2: 1.5e-3, points: [], ...over }],
});

describe('resistors that are off', () => {
  test.each(base.positions.map((_, r) => r))(
    'number %d leaves its watts out, cools its neighbours and hardly moves the others',
    (off) => {
      const positions = base.positions.map((p, r) => ({ ...p, on: r !== off }));
      const { heat } = solved({ ...base, positions });
      expect(heat.total_W).toBeCloseTo(7 * 3, 12);
      expect(heat.positions[off]?.power_W).toBe(0);
      const all = films(base);
      heat.positions.forEach(({ film_K }, r) => {
        // Cold air is dense and less viscous: the cold sink takes a trifle of air from the others.
        const allowed_K = Math.abs(r - off) <= 1 ? -0.5 : 0.01;
        expect(film_K - (all[r] as number)).toBeLessThan(allowed_K);
      });
      expect(heat.positions[off]?.film_K).toBe(Math.min(...heat.positions.map((p) => p.film_K)));
    },
  );

  test('one that is on warms its next neighbours most', () => {
    const positions = base.positions.map((p, r) => ({ ...p, on: r === 3 }));
    const at = films({ ...base, positions });
    for (let r = 4; r < 8; r++) expect(at[r]).toBeLessThan(at[r - 1] as number);
    for (let r = 2; r >= 0; r--) expect(at[r]).toBeLessThan(at[r + 1] as number);
  });

  test('all of them leave the box between the room and the air that the fan has warmed', () => {
    const { heat } = solved({ ...base, positions: base.positions.map((p) => ({ ...p, on: false })) });
    for (const { film_K } of heat.positions) {
      expect(film_K).toBeLessThan(heat.entering_K);
      expect(film_K).toBeGreaterThan(heat.room_K);
    }
  });
});

describe('no watts at all', () => {
  const at = (power_W: number, supply_V: number) =>
    solved({ ...sampleInput(3, power_W), fan: { ...base.fan, supply_V } }).air;

  test.each([12, 8, 6])('draw as much air as a billionth of a watt, at %d V', (supply_V) => {
    expect(at(0, supply_V).flow_m3PerS / at(1e-9, supply_V).flow_m3PerS).toBeCloseTo(1, 9);
  });

  test.each([12, 8, 6])('leave stage by stage the pressure of the fan, at %d V', (supply_V) => {
    const { stages, fanPressure_Pa, draught_Pa } = at(0, supply_V);
    const sum = stages.reduce((total, { dp_Pa }) => total + dp_Pa, 0);
    expect(Math.abs(sum / (fanPressure_Pa + draught_Pa) - 1)).toBeLessThan(1e-8);
  });
});

describe('a row read from its other end', () => {
  test.each([
    ['as built', [0, 0, 0, 0, 0], [3, 3, 3, 3, 3], true, true],
    ['with some flipped', [0, 1, 1, 0, 1], [3, 3, 3, 3, 3], true, true],
    ['with unlike watts', [1, 0, 0, 1, 0], [1, 4, 2, 0, 3], true, true],
    ['without its first sink', [0, 0, 1, 0, 0], [1, 4, 2, 0, 3], false, true],
    ['without either end sink', [0, 1, 0, 1, 1], [1, 4, 2, 1, 3], false, false],
  ] as const)('%s is as hot', (_, flips, watts, hasFirstSink, hasLastSink) => {
    const row = sampleInput(5);
    const positions = row.positions.map((p, r) => ({
      ...p,
      flipped: flips[r] === 1,
      power_W: watts[r] as number,
    }));
    const there = films({ ...row, positions, hasFirstSink, hasLastSink });
    const back = films({
      ...row,
      positions: positions.map((p) => ({ ...p, flipped: !p.flipped })).reverse(),
      hasFirstSink: hasLastSink,
      hasLastSink: hasFirstSink,
    }).reverse();
    there.forEach((T, r) => {
      expect(Math.abs(T - (back[r] as number))).toBeLessThan(1e-8); // the coupling stops at 2e-10 K
    });
  });
});

describe('end sinks', () => {
  test('that are missing leave their neighbour one way only, and hotter', () => {
    const { heat, air } = solved({ ...base, hasFirstSink: false });
    expect(heat.sinks[0]).toBeNull();
    expect(heat.positions[0]?.filmSide_W).toBe(0);
    expect(heat.positions[0]?.secondSide_W).toBeCloseTo(3, 9);
    expect(heat.positions[0]?.film_K).toBeGreaterThan((films(base)[0] as number) + 5);
    expect(air.passages.filter(({ kind }) => kind === 'fins')).toHaveLength(8);
  });

  test('missing on the ladder of the hottest film, the steps still add up', () => {
    const { heat } = solved({ ...base, hasFirstSink: false });
    expect(heat.hottest).toBe(0);
    const sum = heat.ladder.reduce((total, { dT_K }) => total + dT_K, heat.room_K);
    expect(sum).toBeCloseTo(heat.positions[0]?.film_K as number, 9);
  });
});

describe('the second face', () => {
  test('bonded takes more heat than tabs, tabs more than nothing', () => {
    const shareOf = (way: SystemInput['secondFace']['way']) =>
      solved(withFace(way)).heat.positions[3]?.secondSide_W ?? 0;
    expect(shareOf('free')).toBe(0);
    expect(shareOf('tabs')).toBeGreaterThan(0.1);
    expect(shareOf('bonded')).toBeGreaterThan(shareOf('tabs'));
    expect(hottest(withFace('bonded'))).toBeLessThan(hottest(withFace('tabs')));
    expect(hottest(withFace('tabs'))).toBeLessThan(hottest(withFace('free')));
  });

  test('free leaves body and joint as hot as the film', () => {
    for (const { film_K, body_K, joint_K } of solved(withFace('free')).heat.positions) {
      expect(body_K).toBeCloseTo(film_K, 8);
      expect(joint_K).toBeCloseTo(film_K, 8);
    }
  });

  test('every resistor gives what it gets, by its two faces together', () => {
    for (const way of ['tabs', 'bonded', 'free'] as const) {
      for (const p of solved(withFace(way)).heat.positions)
        expect(p.filmSide_W + p.secondSide_W).toBeCloseTo(p.power_W, 8);
    }
  });
});

describe('what stands in the way of the air', () => {
  const filter: SystemInput = {
    ...base,
    inlet: { ...base.inlet, filter: { linear_PaSPerM: 2, quadratic_PaS2PerM2: 0.5, blocked: 0 } },
  };
  const points = [
    { flow_m3PerS: 0, dp_Pa: 0 },
    { flow_m3PerS: 0.003, dp_Pa: 3 },
    { flow_m3PerS: 0.01, dp_Pa: 25 },
  ];
  test.each([
    ['a filter', filter],
    ['a loss at the inlet', extra({ loss: 2 })],
    ['a loss in the plenum', extra({ loss: 2, place: 'plenum' })],
    ['a loss at the outlet', extra({ loss: 2, place: 'outlet' })],
    ['measured points at the inlet', extra({ points })],
    ['measured points at the outlet', extra({ points, place: 'outlet' })],
    ['a smaller plenum', { ...base, plenum: { ...base.plenum, height_m: 20e-3 } }],
    ['a narrower slot', { ...base, baffle: base.baffle && { ...base.baffle, slotWidth_m: 8e-3 } }],
  ] satisfies [string, SystemInput][])(
    '%s raises the system curve everywhere and lowers the flow',
    (_, input) => {
      const [with_, without] = [systemCurves(input, 9), systemCurves(base, 9)];
      with_?.system_Pa.slice(1).forEach((dp, i) => {
        expect(dp).toBeGreaterThan((without?.system_Pa[i + 1] as number) * 1.001);
      });
      expect(with_?.fan_Pa).toEqual(without?.fan_Pa);
      expect(solved(input).air.flow_m3PerS).toBeLessThan(solved(base).air.flow_m3PerS);
    },
  );

  test('measured points stand at the flow they were measured at', () => {
    const flow = solved(extra({ points })).air.flow_m3PerS;
    const again = solved(extra({ points: [...points.slice(0, 2), { flow_m3PerS: flow, dp_Pa: 9 }] }));
    const stage = again.air.stages.find(({ key }) => key === 'inletExtra');
    expect(again.air.flow_m3PerS).not.toBeCloseTo(flow, 6);
    expect(stage?.dp_Pa).toBeGreaterThan(3);
    const alone = extra({
      points: [
        { flow_m3PerS: 0, dp_Pa: 0 },
        { flow_m3PerS: 0.01, dp_Pa: 10 },
      ],
    });
    const { air } = solved(alone);
    expect(air.stages.find(({ key }) => key === 'inletExtra')?.dp_Pa).toBeCloseTo(1000 * air.flow_m3PerS, 6);
  });

  test('stage by stage adds up to the pressure of the fan', () => {
    for (const input of [
      base,
      filter,
      extra({ points }),
      { ...base, baffle: null },
      withFan(base, dippingFan),
    ]) {
      const { stages, fanPressure_Pa, draught_Pa } = solved(input).air;
      const sum = stages.reduce((total, { dp_Pa }) => total + dp_Pa, 0);
      expect(Math.abs(sum / (fanPressure_Pa + draught_Pa) - 1)).toBeLessThan(1e-7);
    }
  });

  test('the plenum has what slot, bank and outlet take from there on, but for the little that warm air adds', () => {
    const { air } = solved(base);
    const ahead = air.stages.filter(({ key }) => ['slot', 'bank', 'outlet'].includes(key));
    expect(ahead).toHaveLength(3);
    const taken_Pa = ahead.reduce((sum, { dp_Pa }) => sum + dp_Pa, 0);
    expect(Math.abs(air.plenum_Pa - taken_Pa)).toBeLessThan(Math.abs(air.draught_Pa) + 1e-9);
    expect(air.plenum_Pa).toBeLessThan(air.fanPressure_Pa);
    // Nothing is fed where nothing turns: warm air draws on the plenum then.
    expect(solved(base, fansStopped).air.plenum_Pa).toBeLessThan(0);
  });

  test('air shares add up to all of it', () => {
    const { share, passages } = solved(base).air;
    expect(Object.values(share).reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 10);
    expect(passages.reduce((sum, p) => sum + p.share, 0)).toBeCloseTo(1, 10);
  });
});

describe('heat and air together', () => {
  test('the exhaust is as much warmer as the watts that the air carries over its stream say', () => {
    const { heat, air } = solved(base);
    const rise_K = heat.exhaust_K - heat.room_K;
    expect(Math.abs((rise_K * air.massFlow_kgPerS * 1006) / (heat.carried_W + heat.fan_W) - 1)).toBeLessThan(
      0.005,
    ); // heat capacity 1006 to 1010 J/(kg·K), moist air left out
  });

  test('thin air high up cools less', () => {
    expect(hottest({ ...base, room: { ...base.room, altitude_m: 3000 } })).toBeGreaterThan(hottest(base));
  });

  test('a warmer room shifts everything by little more than itself', () => {
    const shift = hottest({ ...base, room: { ...base.room, T_K: 308.15 } }) - hottest(base);
    expect(shift).toBeGreaterThan(10);
    expect(shift).toBeLessThan(11);
  });

  test('judged at its worst a row on volts carries the worst watts', () => {
    const load = {
      excitation: 'parallelVolts',
      supply: 5,
      supplyTolerance: 0.05,
      duty: 1,
      atWorst: true,
      scale: 1,
      period_s: 1,
    } as const;
    const { heat } = solved({ ...base, load });
    for (const p of heat.positions) {
      expect(p.nominal_W).toBeCloseTo(2.5, 12);
      expect(p.power_W).toBeCloseTo((5 * 1.05) ** 2 / 9.9, 12);
    }
  });
});

describe('no answer', () => {
  test('where the fan does not start', () => {
    const outcome = solveSystem({ ...base, fan: { ...base.fan, supply_V: 4.9 } });
    expect(outcome).toEqual({ ok: false, reason: 'fanDoesNotStart', details: { supply_V: 4.9, start_V: 5 } });
    expect(systemCurves({ ...base, fan: { ...base.fan, supply_V: 4.9 } }, 5)).toBeNull();
  });

  test('where a resistor with watts has no way to a sink; without watts it takes the air’s temperature', () => {
    const cut: SystemInput = { ...withFace('free'), hasFirstSink: false };
    expect(solveSystem(cut)).toEqual({ ok: false, reason: 'noHeatPath', details: { position: 0 } });
    const { heat } = solved({ ...cut, positions: cut.positions.map((p, r) => ({ ...p, on: r > 0 })) });
    expect(heat.positions[0]?.film_K).toBeCloseTo(heat.entering_K, 6);
  });

  test('where the watts outrun any air: a kilowatt each in a trickle', () => {
    const hot = sampleInput(8, 1000);
    const outcome = solveSystem({ ...hot, fan: { ...hot.fan, supply_V: 5 } });
    expect(outcome.ok === false && outcome.reason).toBe('runaway');
  });
});
