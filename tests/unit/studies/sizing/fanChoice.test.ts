import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { dippingCurve } from '../../../../src/model/examples/dippingCurve.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { onePair } from '../../../../src/model/examples/onePair.ts';
import { twoDozen } from '../../../../src/model/examples/twoDozen.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { fanChoiceJob, withFan } from '../../../../src/studies/sizing/fanChoice.ts';
import { fansAtHand } from '../../../../src/studies/sizing/fansAtHand.ts';
import { standingOf } from '../../../../src/studies/sizing/standing.ts';
import type { Target } from '../../../../src/studies/sizing/target.ts';

const target: Target = { ask: 'everyLimit', margin_K: 5 };
const fans = fansAtHand([twoDozen, eightResistors, onePair, dippingCurve]);

describe('fans at hand', () => {
  test('are every kind entered, once, at rated voltage', () => {
    expect(fans.map(({ name }) => name)).toEqual([
      'Invented 80 mm fan, 12 V',
      'Invented 60 mm fan, 12 V',
      'Invented 40 mm fan, 12 V',
      'Invented 60 mm fan with a dip, 12 V',
    ]);
    const slower = { ...onePair, fan: { ...onePair.fan, supply_V: 7 } };
    expect(fansAtHand([onePair, slower])).toHaveLength(1);
    expect(fansAtHand([slower])[0]?.supply_V).toBe(12);
  });

  test('further fans of a design get the usual frame round their opening', () => {
    const { sideBySide, inARow, size_m, depth_m, inletSpace_m, supplySag, speedLoss, ...kind } = twoDozen.fan;
    const design: Design = {
      ...onePair,
      moreFans: [{ ...kind, place: 'beside', name: 'Beside' }],
    };
    expect(fansAtHand([design]).find(({ name }) => name === 'Beside')?.size_m).toBe(0.08);
  });
});

describe('the smallest fan that does', () => {
  const { tried, reaching } = runJob(fanChoiceJob, { design: eightResistors, target, fans });

  test('stands first, then the quieter of one size, and those that do not reach last', () => {
    expect(reaching).toBe(3);
    expect(tried.map(({ fan }) => fan.size_m)).toEqual([0.06, 0.06, 0.08, 0.04]);
    const sound = tried.map(({ edge }) => edge.here.judged?.outputs.sound_dBA ?? 0);
    expect(sound[0]).toBeLessThan(sound[1] ?? 0);
  });

  test('meets the target at the volts told, and not below', () => {
    for (const { fan, edge } of tried.slice(0, 2)) {
      const at = (supply_V: number) => {
        const design = withFan(eightResistors, fan);
        return standingOf({ ...design, fan: { ...design.fan, supply_V } }, target).left_K ?? -1;
      };
      expect(at(edge.value)).toBeGreaterThanOrEqual(0);
      expect(at(edge.value)).toBeLessThan(0.1);
      expect(at(edge.value * 0.99)).toBeLessThan(0);
    }
  });

  test('one that starts at its rated voltage at best is judged there', () => {
    const stiff = { ...(fans[1] as (typeof fans)[number]), start_V: 12 };
    const [only] = runJob(fanChoiceJob, { design: eightResistors, target, fans: [stiff] }).tried;
    expect(only?.edge).toMatchObject({ state: 'free', value: 12 });
  });

  test('without any fan nothing is tried', () => {
    expect(runJob(fanChoiceJob, { design: eightResistors, target, fans: [] })).toEqual({
      tried: [],
      reaching: 0,
    });
  });
});
