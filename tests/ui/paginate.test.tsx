import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gap, type Measured, type PageOfTables, paginate } from '../../src/ui/sheet/paginate.ts';

const height = 240;
const rows = (count: number, size = 4) => Array.from({ length: count }, () => size);
const slicesOf = (pages: readonly PageOfTables[]) => pages.flat(2).flat();

/** Height of a column, and of a page with its strips under one another. */
function sizeOf(page: PageOfTables, tables: readonly Measured[]): number {
  const column = (slices: PageOfTables[number][number]) =>
    slices.reduce(
      (sum, { table, from, to }) => {
        const whole = tables[table] as Measured;
        return sum + whole.head + whole.rows.slice(from, to).reduce((all, row) => all + row, 0);
      },
      gap * (slices.length - 1),
    );
  return page.reduce((sum, strip) => sum + Math.max(...strip.map(column)), gap * (page.length - 1));
}

const measured: fc.Arbitrary<Measured> = fc.record({
  head: fc.double({ min: 6, max: 12, noNaN: true }),
  rows: fc.array(fc.double({ min: 3, max: 40, noNaN: true }), { minLength: 1, maxLength: 90 }),
  wide: fc.boolean(),
});

describe('tables on pages', () => {
  test('every row stands once and in order, no page is too full, no heads stand alone at its foot', () => {
    fc.assert(
      fc.property(fc.array(measured, { minLength: 1, maxLength: 12 }), (tables) => {
        const pages = paginate(tables, height);
        const slices = slicesOf(pages);
        tables.forEach((table, index) => {
          const own = slices.filter((slice) => slice.table === index);
          expect(own.flatMap(({ from, to }) => table.rows.map((_, i) => i).slice(from, to))).toEqual(
            table.rows.map((_, i) => i),
          );
        });
        for (const page of pages) expect(sizeOf(page, tables)).toBeLessThanOrEqual(height + 1e-9);
        for (const { from, to } of slices) expect(to).toBeGreaterThan(from);
      }),
      { numRuns: 300 },
    );
  });

  test('a long table goes on with its heads on the next page', () => {
    const tables = [{ head: 8, rows: rows(100), wide: true }];
    expect(paginate(tables, height)).toEqual([
      [[[{ table: 0, from: 0, to: 58 }]]],
      [[[{ table: 0, from: 58, to: 100 }]]],
    ]);
  });

  test('a short table is not torn but goes to the next page', () => {
    const tables = [
      { head: 8, rows: rows(50), wide: true },
      { head: 8, rows: rows(12), wide: true },
    ];
    expect(slicesOf(paginate(tables, height))).toEqual([
      { table: 0, from: 0, to: 50 },
      { table: 1, from: 0, to: 12 },
    ]);
    expect(paginate(tables, height)).toHaveLength(2);
  });

  test('narrow tables share the width in two columns, about equally high', () => {
    const tables = Array.from({ length: 6 }, () => ({ head: 8, rows: rows(5), wide: false }));
    const [page, ...more] = paginate(tables, height);
    expect(more).toEqual([]);
    expect(page?.[0]?.map((slices) => slices.map(({ table }) => table))).toEqual([
      [0, 1, 2],
      [3, 4, 5],
    ]);
  });

  test('a row taller than a page stands by itself rather than nowhere', () => {
    const tables = [{ head: 8, rows: [300, 4, 4], wide: true }];
    expect(slicesOf(paginate(tables, height))).toEqual([
      { table: 0, from: 0, to: 1 },
      { table: 0, from: 1, to: 3 },
    ]);
  });

  test('nothing needs no page', () => {
    expect(paginate([], height)).toEqual([]);
  });
});
