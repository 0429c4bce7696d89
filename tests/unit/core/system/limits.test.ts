import { describe, expect, test } from 'vitest';
import type { SystemInput } from '../../../../src/core/system/input.ts';
import { judge } from '../../../../src/core/system/limits.ts';
import type { Limit, LimitKey } from '../../../../src/core/system/outcome.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { solved } from '../../../helpers/solved.ts';

const base = sampleInput();
const touchable: SystemInput = { ...base, limits: { ...base.limits, touchable: true } };

function limit(input: SystemInput, key: LimitKey): Limit {
  const found = solved(input).limits.find((l) => l.key === key);
  if (!found) throw new Error(`no limit ${key}`);
  return found;
}

function withWatts(power_W: number, input = touchable): SystemInput {
  return { ...input, positions: input.positions.map((p) => ({ ...p, power_W })) };
}

describe('limits', () => {
  test('stand in the order of urgency, and the first is the verdict', () => {
    const rank = { fails: 0, little: 1, holds: 2 } as const;
    for (const watts of [0.5, 3, 4, 8]) {
      const { limits, verdict } = solved(withWatts(watts));
      const order = limits.map((l) => [rank[l.state], l.loadFactor ?? Number.POSITIVE_INFINITY] as const);
      order.slice(1).forEach(([state, factor], i) => {
        const [before, least] = order[i] as readonly [number, number];
        expect(state > before || (state === before && factor >= least)).toBe(true);
      });
      expect(verdict).toEqual({ state: limits[0]?.state, limit: limits[0] });
      expect(judge(limits)).toEqual(verdict);
    }
  });

  test('hold at a trifle, and fail at several times the load', () => {
    expect(solved(withWatts(0.1)).verdict.state).toBe('holds');
    expect(solved(withWatts(3.9)).verdict.state).toBe('little');
    expect(solved(withWatts(9)).verdict.state).toBe('fails');
  });

  test('are asked for touch only where somebody can touch, for derating only where the part has such a line', () => {
    const keys = (input: SystemInput) => solved(input).limits.map(({ key }) => key);
    expect(keys(base)).not.toContain('touch');
    expect(keys(touchable)).toContain('touch');
    const byFilm = base.positions.map((p) => ({ ...p, part: { ...p.part, deratedBy: 'film' as const } }));
    expect(keys({ ...base, positions: byFilm })).not.toContain('derating');
    expect(keys({ ...base, positions: byFilm })).not.toContain('ratedPower');
  });

  test('have their margin between value and limit, and stand at the worst place', () => {
    const { limits, heat } = solved(touchable);
    for (const { margin_K, limit, value, quantity } of limits) {
      if (quantity === 'temperature') expect(margin_K).toBeCloseTo(limit - value, 9);
      else expect(margin_K).toBeNull();
    }
    const most = (key: LimitKey) => limits.find((l) => l.key === key)?.value;
    expect(most('film')).toBe(Math.max(...heat.positions.map((p) => p.film_K)));
    expect(most('joint')).toBe(Math.max(...heat.positions.map((p) => p.joint_K)));
    expect(most('bond')).toBe(Math.max(...heat.positions.map((p) => p.bond_K)));
    expect(most('sheet')).toBe(
      Math.max(...heat.sinks.map((s) => Math.max(s?.before_K ?? 0, s?.after_K ?? 0))),
    );
  });

  test('find the part that is nearest to its own limit, not the hottest one', () => {
    const tender = base.positions.map((p, r) =>
      r === 0 ? { ...p, part: { ...p.part, zeroPowerAt_K: 350 } } : p,
    );
    expect(limit({ ...base, positions: tender }, 'film').where).toBe(0);
    expect(solved({ ...base, positions: tender }).heat.hottest).not.toBe(0);
  });
});

describe('the load factor', () => {
  test.each(['film', 'joint', 'bond', 'sheet', 'touch', 'derating', 'ratedPower'] as const)(
    'of %s, put back as load, brings it just to its limit',
    (key) => {
      // Fan heat stays; the flow moves a little, for hot air is thin.
      for (const watts of [3, 7]) {
        const { loadFactor } = limit(withWatts(watts), key);
        const there = limit(withWatts(watts * (loadFactor as number)), key);
        expect(Math.abs((there.loadFactor as number) - 1)).toBeLessThan(0.01);
      }
    },
  );

  test('of the exhaust does so too, where the exhaust is the tighter one', () => {
    const cool = { ...touchable, limits: { ...touchable.limits, exhaust_K: 303.15 } };
    const { loadFactor } = limit(withWatts(3, cool), 'exhaust');
    const there = limit(withWatts(3 * (loadFactor as number), cool), 'exhaust');
    expect(Math.abs((there.loadFactor as number) - 1)).toBeLessThan(0.01);
  });

  test('of volts goes with their square', () => {
    const load = {
      excitation: 'parallelVolts',
      supply: 5,
      supplyTolerance: 0,
      duty: 1,
      atWorst: false,
      scale: 1,
      period_s: 1,
    } as const;
    const positions = base.positions.map((p) => ({ ...p, part: { ...p.part, elementLimit_V: 10 } }));
    expect(limit({ ...base, load, positions }, 'voltage').loadFactor).toBeCloseTo(4, 9);
    expect(limit({ ...base, load: { ...load, supply: 9.9 }, positions }, 'voltage').state).toBe('little');
    expect(limit({ ...base, load: { ...load, supply: 10.1 }, positions }, 'voltage').state).toBe('fails');
  });

  test('is nil where the room itself is too hot, and none where nothing warms', () => {
    const hotRoom = { ...base, room: { ...base.room, T_K: 360 } };
    expect(limit(hotRoom, 'sheet')).toMatchObject({ loadFactor: 0, state: 'fails' });
    expect(limit(withWatts(0), 'voltage').loadFactor).toBeNull();
  });

  test('of a part derated by the air does not see its own watts’ warmth', () => {
    const part = (p: SystemInput['positions'][number]) => ({
      ...p,
      part: { ...p.part, deratedBy: 'air' as const },
    });
    const byAir = { ...base, room: { ...base.room, T_K: 363.15 }, positions: base.positions.map(part) };
    const { loadFactor, value } = limit(byAir, 'derating');
    expect(value).toBe(solved(byAir).heat.entering_K);
    // Straight line from 4 W at 70 °C to none at 155 °C.
    expect((loadFactor as number) * 3).toBeCloseTo((4 * (428.15 - value)) / 85, 9);
  });
});

describe('a bond above its glass transition', () => {
  test('has little to spare even where its service limit is far', () => {
    const soft = { ...base, bond: { ...base.bond, glassTransition_K: 310, serviceLimit_K: 500 } };
    expect(limit(soft, 'bond').state).toBe('little');
    expect(limit({ ...soft, bond: { ...soft.bond, glassTransition_K: 400 } }, 'bond').state).toBe('holds');
  });
});
