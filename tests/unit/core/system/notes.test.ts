import { describe, expect, test } from 'vitest';
import type { NoteCode } from '../../../../src/core/card.ts';
import { cards } from '../../../../src/core/cards.ts';
import type { SystemInput } from '../../../../src/core/system/input.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { dippingFan, solved, withFan } from '../../../helpers/solved.ts';

const base: SystemInput = {
  ...sampleInput(),
  inlet: { guard: { kind: 'none', freeShare: 1, loss: 0 }, filter: null },
};
const strong = base.fan.curve.map((p) => [p.flow_m3PerS * 3600 * 4, p.dp_Pa * 20] as const);
const partly = (over: Partial<SystemInput['positions'][number]['part']>) =>
  base.positions.map((p, r) => (r === 2 ? { ...p, part: { ...p.part, ...over } } : p));

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
  meanOnly: { ...base, load: { ...base.load, duty: 0.5 } },
};

describe('notes', () => {
  test('are none on a plain box within every range', () => {
    expect(solved(base).notes).toEqual([]);
  });

  test.each(Object.entries(provoked))('%s is told where it is so', (code, input) => {
    expect(solved(input).notes.map((note) => note.code)).toContain(code);
  });

  test('name the place: the resistor that is above its rating, the sinks in transition', () => {
    const rating = solved(provoked.aboveRating).notes.filter(({ code }) => code === 'aboveRating');
    expect(rating).toMatchObject([{ where: 'resistor 3', value: 3, high: 2 }]);
    const transition = solved(provoked.transition).notes.filter(({ code }) => code === 'transition');
    expect(transition.map(({ where }) => where)).toContain('sink 1');
  });

  test('name the card whose range was left', () => {
    const found = solved(provoked.outsideRange).notes.find(({ code }) => code === 'outsideRange');
    expect(found).toMatchObject({
      card: 'standardPressure',
      severity: 'beyond',
      variable: 'altitude_m',
      value: 12_000,
    });
    const slow = { ...base, fan: { ...base.fan, supply_V: 5 } };
    expect(solved(slow).notes.map(({ card }) => card)).toContain('fanLaws');
  });
});

describe('the cards of an answer', () => {
  const used = (input: SystemInput) => solved(input).used;

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
    expect(used({ ...base, outlet: { kind: 'none', freeShare: 1, loss: 0 } })).not.toContain(
      'punchedPlateLoss',
    );
    expect(baffled).toContain('punchedPlateLoss');
    expect(used(provoked.transition).length).toBeGreaterThan(baffled.length);
  });
});
