import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readHead } from '../../src/io/columnHead.ts';
import { readColumns } from '../../src/io/columns.ts';
import { tableText } from '../../src/io/tableBytes.ts';
import { curveColumns } from '../../src/store/paste/curveColumns.ts';
import { dimensionOfSpelling } from '../../src/units/spellings.ts';

const runs = { seed: 20261128, numRuns: 400 };
/** What tables are made of, and what breaks them. */
const piece = fc.constantFrom(
  ...[
    '0',
    '12,5',
    '1.234',
    '60 Pa',
    'Q',
    'flow [m³/h]',
    '(Pa)',
    'p',
    '"',
    '""',
    ';',
    ',',
    '\t',
    ' ',
    '|',
    '#',
    '//',
  ],
  ...['\n', '\r', '\r\n', '---', 'sep=;\n', '\ufeff', '\0', '−', '°C', '<', '{', "'", '\u202f'],
);
const anyText = fc.oneof(
  fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join('')),
  fc.string({ unit: 'binary', maxLength: 80 }),
);

describe('any text', () => {
  test('is read into equal rows, each with its line, or refused with a reason', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const read = readColumns(text);
        if (!read.ok) return void expect(read.reason).toMatch(/\S\.$/);
        const { head, rows, lines } = read.columns;
        const width = head?.length ?? rows[0]?.length ?? 0;
        expect(rows.every((row) => row.length === width)).toBe(true);
        expect(lines).toHaveLength(rows.length);
        expect(lines.every((line, at) => line > (lines[at - 1] ?? 0))).toBe(true);
        const found = curveColumns(read.columns);
        if (found.ok) return void expect(found.flow).not.toBe(found.pressure);
        return void expect(found.reason).toMatch(/\S\.$/);
      }),
      runs,
    );
  });

  test('as a head has the name as it is written, or a unit that is known beside it', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { name, unit, written } = readHead(text);
        if (unit === null) return void expect(name).toBe(written);
        return void expect(dimensionOfSpelling(unit)).not.toBeNull();
      }),
      runs,
    );
  });

  test('of any bytes is a text or none', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
        expect(typeof tableText(new Uint8Array(bytes)).ok).toBe('boolean');
      }),
      runs,
    );
  });
});

test('one table is the same, whatever separator, decimal mark, quotes and line ends it is written with', () => {
  const row = fc.tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 9999 }));
  const style = fc.record({
    separator: fc.constantFrom(';', '\t', ',', '|'),
    comma: fc.boolean(),
    quoted: fc.boolean(),
    end: fc.constantFrom('\n', '\r', '\r\n'),
    mark: fc.constantFrom('', '\ufeff'),
    last: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 20 }), style, (points, written) => {
      const { separator, end } = written;
      const isComma = written.comma && (separator !== ',' || written.quoted);
      const cells = points.map((point) => point.map((n) => (n / 100).toFixed(2)));
      const said = cells.map((line) => line.map((cell) => (isComma ? cell.replace('.', ',') : cell)));
      const lines = [['Q [m³/h]', 'p (Pa)'], ...said].map((line) =>
        line.map((cell) => (written.quoted ? `"${cell}"` : cell)).join(separator),
      );
      const read = readColumns(written.mark + lines.join(end) + (written.last ? end : ''));
      expect(read).toMatchObject({
        ok: true,
        columns: { rows: said, separator, decimal: isComma ? ',' : '.', lines: said.map((_, at) => at + 2) },
      });
    }),
    runs,
  );
});

describe('ten megabytes', () => {
  const length = 10_000_000;
  test('of rows are read, every one of them', () => {
    const row = '12.5;41,5;2400\n';
    const read = readColumns(`Q;p;n\n${row.repeat(length / row.length)}`);
    expect(read.ok && read.columns.rows.length).toBe(Math.floor(length / row.length));
  });

  test.each([
    ['an open quote', `0;60\n"${'1;2\n'.repeat(length / 4)}`, /^Line 2: a quote is opened and never closed/],
    ['a dash', `${'-'.repeat(length)}x`, null],
    [
      'a line too long at the end',
      `${'1.0625000;2500.5625\n'.repeat(length / 20)}1;2;3`,
      /^Line 500001 has 3 cells/,
    ],
    ['something that is no text, at the end', `${'1;2\n'.repeat(length / 4)}\0`, /^Line 2500001: /],
  ])('of %s are read or refused', (_, text, reason) => {
    const read = readColumns(text);
    expect(read.ok ? null : read.reason).toEqual(reason === null ? null : expect.stringMatching(reason));
  });
});
