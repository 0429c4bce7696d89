import { describe, expect, test } from 'vitest';
import { sources } from '../../../../src/core/sources.ts';
import { defaultDesign } from '../../../../src/model/defaults.ts';
import type { Design } from '../../../../src/model/design.ts';
import { fieldAt } from '../../../../src/model/fields.ts';
import { mayVary } from '../../../../src/model/spreads/mayVary.ts';
import { spreadsInUse, spreadsOf, usualSpreads, withSpread } from '../../../../src/model/spreads/spreads.ts';
import { tolerances } from '../../../../src/model/spreads/tolerances.ts';

const paths = (spreads: readonly { readonly path: string }[]) => spreads.map(({ path }) => path);
const own = { path: 'room.T_K', kind: 'normal', relative: false, size: 3 } as const;

describe('the usual spreads', () => {
  test('stand each on an input that may vary, once', () => {
    for (const { path } of usualSpreads) expect(mayVary(path), path).toBe(true);
    expect(new Set(paths(usualSpreads)).size).toBe(usualSpreads.length);
  });

  test('say what, why and from where', () => {
    for (const { path, name, because, source } of usualSpreads) {
      expect(name.trim(), path).not.toBe('');
      expect(because.trim(), path).not.toBe('');
      if (source !== 'assumption') expect(Object.keys(sources), path).toContain(source);
    }
  });

  test('have a size, or a tolerance that the design states', () => {
    for (const { path, kind, size } of usualSpreads) {
      if (kind === 'tolerance') expect(Object.keys(tolerances), path).toContain(path);
      else expect(size, path).toBeGreaterThan(0);
    }
  });

  test('are small beside what is usual', () => {
    for (const { path, relative, size } of usualSpreads) {
      const field = fieldAt(path);
      if (relative) expect(size, path).toBeLessThanOrEqual(0.3);
      else if (field.kind === 'quantity' && field.usual)
        expect(size, path).toBeLessThanOrEqual(field.usual[1] / 5);
    }
  });
});

describe('the spreads of a design', () => {
  test('are the usual ones where it says nothing', () => {
    expect(spreadsOf(defaultDesign)).toMatchObject(
      usualSpreads.map(({ path, kind, size }) => ({ path, kind, size })),
    );
    expect(spreadsOf(defaultDesign).every((spread) => !spread.own)).toBe(true);
  });

  test('take the reader’s own in the place of a usual one, and others after them', () => {
    const rare = { path: 'bond.glassTransition_K', kind: 'uniform', relative: false, size: 5 } as const;
    const all = spreadsOf({ ...defaultDesign, spreads: [rare, own] });
    expect(all).toHaveLength(usualSpreads.length + 1);
    expect(all.find(({ path }) => path === own.path)).toMatchObject({
      ...own,
      own: true,
      name: 'room temperature',
    });
    expect(all.at(-1)).toMatchObject({
      ...rare,
      own: true,
      usual: null,
      name: 'glass transition, bond',
      reach: 'box',
    });
  });

  test('leave out what the design does not read', () => {
    const inUse = paths(spreadsInUse(defaultDesign));
    expect(inUse).toContain('baffle.slotWidth_m');
    expect(inUse).toContain('positions[].power_W');
    for (const path of [
      'parts[].R_Ohm',
      'load.supply_V',
      'inlet.filterLinear_PaSPerM',
      'moreFans[].supply_V',
    ])
      expect(inUse).not.toContain(path);
    const { baffle, load } = defaultDesign;
    const other: Design = {
      ...defaultDesign,
      baffle: { ...baffle, fitted: false },
      load: { ...load, excitation: 'seriesVolts' },
    };
    const otherwise = paths(spreadsInUse(other));
    expect(otherwise.filter((path) => path.startsWith('baffle'))).toEqual([]);
    expect(otherwise).toContain('parts[].R_Ohm');
    expect(otherwise).toContain('load.supply_V');
    expect(otherwise).not.toContain('load.supply_A');
    expect(otherwise).not.toContain('positions[].power_W');
  });
});

describe('a spread put into a design', () => {
  test('stands in a row of its own', () => {
    expect(withSpread(defaultDesign, own)).toEqual([own]);
    const again = { ...own, size: 4 };
    expect(withSpread({ ...defaultDesign, spreads: [own] }, again)).toEqual([again]);
  });

  test('leaves no row where it is the usual one', () => {
    const [usual] = usualSpreads;
    if (!usual) throw new Error('there are some');
    expect(withSpread(defaultDesign, usual)).toEqual([]);
    expect(withSpread({ ...defaultDesign, spreads: [own] }, { ...own, kind: 'uniform', size: 2 })).toEqual(
      [],
    );
  });

  test('of none is kept for what usually varies, and goes for what does not', () => {
    const none = { ...own, kind: 'none', size: 0 } as const;
    expect(withSpread(defaultDesign, none)).toEqual([none]);
    expect(withSpread(defaultDesign, { ...none, path: 'bond.glassTransition_K' })).toEqual([]);
  });
});
