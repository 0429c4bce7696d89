import { describe, expect, test } from 'vitest';
import type { NoteCode } from '../../../../src/core/card.ts';
import { cards } from '../../../../src/core/cards.ts';
import type { SystemInput } from '../../../../src/core/system/input.ts';
import { fansStopped, ordinaryRun } from '../../../../src/core/system/input.ts';
import { trustOf } from '../../../../src/core/system/trust.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { dippingFan, withFan } from '../../../helpers/solved.ts';

const base: SystemInput = {
  ...sampleInput(),
  fan: { ...sampleInput().fan, outletSpace_m: 0.1 },
  inlet: { guard: { kind: 'none', freeShare: 1, loss: 0, blocked: 0 }, filter: null },
};
const strong = base.fan.curve.map((p) => [p.flow_m3PerS * 3600 * 4, p.dp_Pa * 20] as const);
const partly = (over: Partial<SystemInput['positions'][number]['part']>) =>
  base.positions.map((p, r) => (r === 2 ? { ...p, part: { ...p.part, ...over } } : p));

const weak = {
  ...base.fan,
  name: 'weak',
  place: 'beside',
  curve: base.fan.curve.map((p) => ({ flow_m3PerS: p.flow_m3PerS / 4, dp_Pa: p.dp_Pa / 10 })),
} as const;
const tight = { kind: 'ownLoss', freeShare: 1, loss: 1e6, blocked: 0 } as const;
/** These show only while the fans stand still. */
const whileStopped: readonly NoteCode[] = ['airRunsBack', 'lyingFins'];

const provoked: Record<NoteCode, SystemInput> = {
  outsideRange: { ...base, room: { ...base.room, altitude_m: 12_000 } },
  transition: withFan(base, strong),
  unevenFeed: { ...base, plenum: { ...base.plenum, height_m: 8e-3 } },
  bondAboveGlass: { ...base, bond: { ...base.bond, glassTransition_K: 320 } },
  aboveRating: { ...base, positions: partly({ deratedBy: 'film', rated_W: 2 }) },
  severalPoints: withFan(
    base,
    dippingFan.map(([flow, dp]) => [flow * 1.03, dp] as const),
  ),
  secondOpinion: {
    ...base,
    sink: { ...base.sink, length_m: 0.1, finHeight_m: 30e-3, finThickness_m: 0.3e-3, finCount: 20 },
  },
  tightGap: { ...base, baffle: base.baffle && { ...base.baffle, endClearance_m: 0.2e-3 } },
  fanObstructed: { ...base, fan: { ...base.fan, inletSpace_m: 0.02 } },
  fanBackwards: { ...base, fan: { ...base.fan, others: [weak] } },
  bridgedDip: {
    ...withFan(base, dippingFan),
    fan: { ...withFan(base, dippingFan).fan, others: [{ ...base.fan, name: 'plain', place: 'beside' }] },
  },
  airRunsBack: { ...base, box: { ...base.box, tilt_rad: 0.3 }, inlet: { ...base.inlet, guard: tight } },
  lyingFins: { ...base, box: { ...base.box, tilt_rad: Math.PI / 2 } },
};

describe('notes', () => {
  test('are none on a plain box within every range', () => {
    expect(trustOf(base).notes).toEqual([]);
  });

  test.each(Object.entries(provoked))('%s is told where it is so', (code, input) => {
    const run = whileStopped.includes(code as NoteCode) ? fansStopped : ordinaryRun;
    expect(trustOf(input, run).notes.map((note) => note.code)).toContain(code);
  });

  test('name the place: the resistor that is above its rating, the sinks in transition', () => {
    const rating = trustOf(provoked.aboveRating).notes.filter(({ code }) => code === 'aboveRating');
    expect(rating).toMatchObject([{ where: 'resistor 3', value: 3, high: 2 }]);
    const transition = trustOf(provoked.transition).notes.filter(({ code }) => code === 'transition');
    expect(transition.map(({ where }) => where)).toContain('sink 1');
  });

  test('name the card whose range was left', () => {
    const found = trustOf(provoked.outsideRange).notes.find(({ code }) => code === 'outsideRange');
    expect(found).toMatchObject({
      card: 'standardPressure',
      severity: 'beyond',
      variable: 'altitude_m',
      value: 12_000,
    });
    const slow = { ...base, fan: { ...base.fan, supply_V: 5 } };
    expect(trustOf(slow).notes.map(({ card }) => card)).toContain('fanLaws');
  });
});

describe('the cards of an answer', () => {
  const used = (input: SystemInput) => trustOf(input).used;

  test('are known, each once', () => {
    const known = new Set(cards.map(({ id }) => id));
    for (const input of [base, ...Object.values(provoked)]) {
      const ids = used(input);
      expect(new Set(ids).size).toBe(ids.length);
      for (const id of ids) expect(known).toContain(id);
    }
  });

  test('follow what is in the box', () => {
    const open = used({ ...base, baffle: null });
    const baffled = used(base);
    expect(baffled).toContain('baffleSlotLoss');
    expect(open).not.toContain('baffleSlotLoss');
    expect(open).toContain('mitreBendLoss');
    expect(used({ ...base, outlet: { kind: 'none', freeShare: 1, loss: 0, blocked: 0 } })).not.toContain(
      'punchedPlateLoss',
    );
    expect(baffled).toContain('punchedPlateLoss');
    expect(used(provoked.transition).length).toBeGreaterThan(baffled.length);
  });
});
