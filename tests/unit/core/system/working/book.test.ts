import { describe, expect, test } from 'vitest';
import { card as slab } from '../../../../../src/core/conduction/slabResistance_KPerW.ts';
import { conductance } from '../../../../../src/core/system/working/balances/contactBalances.ts';
import {
  createBook,
  noteFigure,
  settled,
  tellBalance,
  tellCard,
} from '../../../../../src/core/system/working/book.ts';

const layer = { thickness_m: 1e-3, k_WPerMK: 2, area_m2: 1e-4 };

describe('the book of steps', () => {
  test('tells the same values in the same equation once, with both places', () => {
    const book = createBook();
    const first = tellCard(book, slab, { part: 'resistor', index: 0 }, layer);
    const second = tellCard(book, slab, { part: 'resistor', index: 1 }, layer);
    expect(second).toEqual(first);
    expect(book.steps).toHaveLength(1);
    expect(book.steps[0]?.places.map(({ index }) => index)).toEqual([0, 1]);
  });

  test('keeps values apart that come from elsewhere', () => {
    const book = createBook();
    tellCard(book, slab, { part: 'box' }, layer);
    tellCard(book, slab, { part: 'box' }, { ...layer, thickness_m: settled(1e-3) });
    expect(book.steps).toHaveLength(2);
  });

  test('knows everything that a figure is built upon, in order, itself last', () => {
    const book = createBook();
    const place = { part: 'box' } as const;
    tellCard(book, slab, place, { ...layer, k_WPerMK: 9 });
    const R_KPerW = tellCard(book, slab, place, layer);
    const G = tellBalance(book, conductance, place, { R_KPerW });
    noteFigure(book, 'conductance', null, false, G);
    expect(book.figures).toEqual([
      { kind: 'conductance', of: null, stopped: false, value: 0.2, steps: [2, 3] },
    ]);
    expect(book.steps[2]?.from).toEqual({ R_KPerW: 2 });
  });
});
