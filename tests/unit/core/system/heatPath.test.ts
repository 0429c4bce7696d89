import { describe, expect, test } from 'vitest';
import { spreadingPeak_KPerW } from '../../../../src/core/conduction/spreadingLee.ts';
import { bankGeometry } from '../../../../src/core/system/geometry.ts';
import { buildHeatPath, contactConductance_WPerK } from '../../../../src/core/system/heatPath.ts';
import type { SystemInput } from '../../../../src/core/system/input.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const pathOf = (input: SystemInput) => buildHeatPath(input, bankGeometry(input));
const base = sampleInput(3);

describe('buildHeatPath', () => {
  test('joins each film to the sink before it and its second face to the sink after it', () => {
    for (const [r, position] of pathOf(base).positions.entries()) {
      expect([position.filmContact?.sink, position.secondContact?.sink]).toEqual([r, r + 1]);
    }
  });

  test('turns a flipped resistor round', () => {
    const positions = base.positions.map((p, r) => ({ ...p, flipped: r === 1 }));
    const { filmContact, secondContact } = pathOf({ ...base, positions }).positions[1] ?? {};
    expect([filmContact?.sink, secondContact?.sink]).toEqual([2, 1]);
  });

  test('has no second way for a free face, and none to a sink that is missing', () => {
    const free = pathOf({ ...base, secondFace: { ...base.secondFace, way: 'free' } });
    expect(free.positions.map((p) => p.secondContact)).toEqual([null, null, null]);
    const cut = pathOf({ ...base, hasFirstSink: false });
    expect(cut.positions[0]?.filmContact).toBeNull();
    expect(cut.sinks[0]).toBeNull();
    expect(cut.layout.stranded).toEqual([]);
  });

  test('tells a resistor that no sink serves', () => {
    const input: SystemInput = {
      ...base,
      hasFirstSink: false,
      secondFace: { ...base.secondFace, way: 'free' },
    };
    expect(pathOf(input).layout.stranded).toEqual([0]);
  });

  test('starts the second way at the terminals for tabs and at the body for a bond', () => {
    const ahead = (way: 'tabs' | 'bonded') => {
      const path = pathOf({ ...base, secondFace: { ...base.secondFace, way } });
      const position = path.positions[0];
      if (!position?.secondContact) throw new Error('a second way');
      const start = path.network.a[position.secondContact.conductance];
      return { start, position, ahead_KPerW: position.secondContact.ahead_KPerW };
    };
    const tabs = ahead('tabs');
    expect(tabs.start).toBe(tabs.position.joint);
    // Two copper tabs 3 × 0.5 mm, 3 mm long; 0.1 mm of solder on two terminals 3.15 × 0.6 mm. Worked by hand.
    expect(tabs.ahead_KPerW).toBeCloseTo(3e-3 / (390 * 2 * 1.5e-6) + 1e-4 / (58 * 2 * 3.15e-3 * 0.6e-3), 10);
    const bonded = ahead('bonded');
    expect(bonded.start).toBe(bonded.position.body);
    expect(bonded.ahead_KPerW).toBe(0);
  });

  test('keeps neighbours close: the band does not widen with the row', () => {
    const wide = pathOf(sampleInput(20)).network.halfBandwidth;
    expect(wide).toBe(pathOf(sampleInput(3)).network.halfBandwidth);
    expect(wide).toBeLessThan(8);
  });
});

describe('contactConductance_WPerK', () => {
  test('puts coating, bond, plate and spreading in a row', () => {
    const contact = pathOf(base).positions[0]?.filmContact;
    if (!contact) throw new Error('a contact');
    const plain = contact.ahead_KPerW + contact.bond_KPerW + contact.plate_KPerW;
    const spreading = spreadingPeak_KPerW(contact.spreading, 200, 100);
    expect(spreading).toBeGreaterThan(0);
    expect(1 / contactConductance_WPerK(contact, 200, 100, 0)).toBeCloseTo(plain, 12);
    expect(1 / contactConductance_WPerK(contact, 200, 100, 2)).toBeCloseTo(plain + 2 * spreading, 12);
    expect(contact.ahead_KPerW).toBeCloseTo(20e-6 / (0.5 * 6.35e-3 * 3.15e-3), 10);
  });
});
