import { describe, expect, test } from 'vitest';
import type { Design } from '../../../src/model/design.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { sampleOf } from '../../helpers/sampleReport.ts';

const base = exampleById('twoDozen');
const keysOf = (change: Partial<Design>) =>
  sampleOf({ ...base, ...change }).report.cautions.map((caution) => caution.key);

describe('cautions', () => {
  test('hot surfaces and fire always stand, even without an answer', () => {
    expect(keysOf({})).toEqual(expect.arrayContaining(['hotSurfaces', 'fire']));
    expect(keysOf({ fan: { ...base.fan, supply_V: 0 } })).toEqual(
      expect.arrayContaining(['hotSurfaces', 'fire']),
    );
  });

  test('local codes come first as soon as the supply can kill, and insulation with them', () => {
    expect(keysOf({ load: { ...base.load, supply_V: 230 } }).slice(0, 2)).toEqual(['practice', 'insulation']);
    expect(keysOf({ load: { ...base.load, supply_V: 12 } })).not.toContain('practice');
  });

  test('watts given without a supply cannot rule out mains', () => {
    expect(keysOf({ load: { ...base.load, excitation: 'wattsEach' } })[0]).toBe('practice');
  });

  test('the volts of a string driven by amps are summed: 24 resistors at 0.1 A stay below 50 V only where they are few', () => {
    const amps = { ...base.load, excitation: 'seriesAmps' as const, supply_A: 0.1 };
    expect(keysOf({ load: amps })).toContain('practice');
    expect(keysOf({ load: amps, positions: base.positions.slice(0, 2) })).not.toContain('practice');
  });

  test('an unguarded fan and an open outlet are told', () => {
    const none = { kind: 'none' as const, freeShare: 1, loss: 0 };
    expect(keysOf({ inlet: { ...base.inlet, guard: none } })).toContain('guard');
    expect(keysOf({})).not.toContain('guard');
    const open = sampleOf({ ...base, outlet: none }).report.cautions.find(
      (caution) => caution.key === 'fingerAccess',
    );
    expect(open?.title).toBe('The outlet is open');
  });

  test('the widest slot follows the distance to the sinks: 6 mm at 10 mm, 8 mm at 20 mm, none at 1 mm (ISO 13857 table)', () => {
    const text = (headroom_m: number) =>
      sampleOf({ ...base, box: { ...base.box, headroom_m } }).report.cautions.find(
        (caution) => caution.key === 'fingerAccess',
      )?.text;
    expect(text(0.01)).toMatch(/no wider than 6\smm/);
    expect(text(0.02)).toMatch(/no wider than 8\smm/);
    expect(text(0.001)).toContain('no slot there');
  });

  test('solvent cement goes with plastics that are glued with it', () => {
    expect(keysOf({})).toContain('solventCement');
    expect(keysOf({ box: { ...base.box, material: 'plywood' } })).not.toContain('solventCement');
  });
});
