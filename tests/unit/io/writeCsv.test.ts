import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readNumber } from '../../../src/io/cellNumbers.ts';
import { readCsv } from '../../../src/io/csv.ts';
import { type CsvCell, writeCsv } from '../../../src/io/writeCsv.ts';

const readBack = (text: string) => {
  const read = readCsv(text);
  if (!read.ok) throw new Error(read.reason);
  return read.table;
};

describe('RFC 4180', () => {
  test('§2.1: every line ends with CR LF, the last one too', () => {
    expect(writeCsv([['aaa', 'bbb'], [1]])).toBe('aaa,bbb\r\n1\r\n');
  });

  test('§2.4: commas between cells, none after the last, spaces kept as part of a cell', () => {
    expect(writeCsv([['a b', 'c', '']])).toBe('a b,c,\r\n');
    expect(writeCsv([[' a ', 'b']])).toBe('" a ",b\r\n');
  });

  test('§2.6: quotes around line ends, quotes and commas', () => {
    expect(writeCsv([['a', 'b\r\nb', 'c,c']])).toBe('a,"b\r\nb","c,c"\r\n');
  });

  test('§2.7: a quote inside is doubled', () => {
    expect(writeCsv([['a', 'b"bb', 'c']])).toBe('a,"b""bb",c\r\n');
  });
});

describe('a number', () => {
  test('is bare, with a dot, without groups, in full', () => {
    expect(writeCsv([[1234567.25, -0.5, 1 / 3, 1e-9]])).toBe('1234567.25,-0.5,0.3333333333333333,1e-9\r\n');
  });

  test('that is missing, or none, leaves its cell empty', () => {
    expect(writeCsv([[null, Number.NaN, Number.POSITIVE_INFINITY, 0]])).toBe(',,,0\r\n');
  });
});

describe('a text that a spreadsheet would run', () => {
  test.each(['=1+1', '+cmd', '-cmd', '@x', '＝1', '\0=1'])('is disarmed: %j', (text) => {
    expect(writeCsv([[text]])).toBe(`'${text}\r\n`);
  });

  test.each(['\t=1', '\r=1', '\n=1'])('is disarmed and quoted: %j', (text) => {
    expect(writeCsv([[text]])).toBe(`"'${text}"\r\n`);
  });

  test.each(['-5', '+5', '-', '–', '−3 K over', '1.6 mm', 'a = b'])('is not %j', (text) => {
    expect(writeCsv([[text]])).toBe(`${text}\r\n`);
  });
});

describe('what is written is read back the same', () => {
  const name = fc.string({ minLength: 1, unit: 'binary' }).filter((text) => text.trim() !== '');
  const cell: fc.Arbitrary<CsvCell> = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.string({ unit: 'binary' }),
    fc.constantFrom('a;b', 'a\tb', 'a,b', '"', '""', '#a', '1,5', ' ', '\r\n'),
    fc.constant(null),
  );
  /** As the reader sees it: the apostrophe of a disarmed text is part of the text. */
  const seen = (value: CsvCell) => (value === null ? '' : String(value));

  test('numbers and texts of any kind, whatever separators stand in them', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }).chain((width) =>
          fc.array(fc.tuple(name, fc.array(cell, { minLength: width, maxLength: width })), {
            minLength: 2,
            maxLength: 6,
          }),
        ),
        (lines) => {
          const rows = lines.map(([first, rest]) => [first, ...rest]);
          const { rows: back, separator } = readBack(writeCsv(rows));
          expect(separator).toBe(',');
          expect(back).toHaveLength(rows.length);
          rows.forEach((row, r) => {
            row.forEach((value, c) => {
              const read = back[r]?.[c] ?? '';
              if (typeof value === 'number') expect(readNumber(read, '.')).toBe(value + 0);
              else expect([seen(value), `'${seen(value)}`]).toContain(read);
            });
          });
        },
      ),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test('behind a byte order mark as well', () => {
    expect(readBack(`\ufeff${writeCsv([['m³/h', 1]])}`).rows).toEqual([['m³/h', '1']]);
  });
});
