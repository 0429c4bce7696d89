import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readNumber } from '../../../src/io/cellNumbers.ts';
import { readCsv } from '../../../src/io/csv.ts';

const tableOf = (text: string) => {
  const read = readCsv(text);
  if (!read.ok) throw new Error(read.reason);
  return read.table;
};

describe('reading a table', () => {
  test.each([
    [
      'semicolons and decimal commas',
      '0,5;60,5\n1,0;55,2',
      ';',
      ',',
      [
        ['0,5', '60,5'],
        ['1,0', '55,2'],
      ],
    ],
    [
      'commas and decimal points',
      '0.5,60.5\n1.0,55.2\n',
      ',',
      '.',
      [
        ['0.5', '60.5'],
        ['1.0', '55.2'],
      ],
    ],
    [
      'tabs',
      'flow\tpressure\n0\t60\n1\t55',
      '\t',
      null,
      [
        ['flow', 'pressure'],
        ['0', '60'],
        ['1', '55'],
      ],
    ],
    [
      'blanks',
      '0 60\n 1   55\n',
      ' ',
      null,
      [
        ['0', '60'],
        ['1', '55'],
      ],
    ],
    [
      'blanks and decimal commas',
      '0,5 60,5\n1,0 55,2',
      ' ',
      ',',
      [
        ['0,5', '60,5'],
        ['1,0', '55,2'],
      ],
    ],
    [
      'tabs and decimal commas',
      '0,5\t60,5\n1,0\t55,2',
      '\t',
      ',',
      [
        ['0,5', '60,5'],
        ['1,0', '55,2'],
      ],
    ],
    [
      'a comma and a blank after it',
      'flow, pressure\n0, 60\n1, 55',
      ',',
      null,
      [
        ['flow', 'pressure'],
        ['0', '60'],
        ['1', '55'],
      ],
    ],
    [
      'one column of decimal commas under a word',
      'watts\n1,5\n22,25\n',
      '\t',
      ',',
      [['watts'], ['1,5'], ['22,25']],
    ],
    ['one column', '60\n55\n', '\t', null, [['60'], ['55']]],
  ])('finds %s', (_name, text, separator, decimal, rows) => {
    expect(tableOf(text)).toMatchObject({ separator, decimal, rows });
  });

  test('skips a byte order mark, comments and empty lines, and takes any line end', () => {
    expect(
      tableOf('\ufeff# measured on the bench, 3 points\r\n\r\nq;p\r\n0;60\r# later\r1;55\n').rows,
    ).toEqual([
      ['q', 'p'],
      ['0', '60'],
      ['1', '55'],
    ]);
  });

  test('keeps separators, quotes and line ends that stand in quotes', () => {
    expect(tableOf('"a ""b""",c\n"d,e","f\ng"\n').rows).toEqual([
      ['a "b"', 'c'],
      ['d,e', 'f\ng'],
    ]);
  });

  test('takes no mark for the separator that stands in the quotes of a later cell', () => {
    expect(tableOf('a,"b;c"\nd,"e;f"\n').rows).toEqual([
      ['a', 'b;c'],
      ['d', 'e;f'],
    ]);
  });

  test('keeps empty cells', () => {
    expect(tableOf('1;;3\n4;5;\n').rows).toEqual([
      ['1', '', '3'],
      ['4', '5', ''],
    ]);
  });

  test.each([[''], ['\n\n'], ['# only a comment']])('refuses %j, which holds no table', (text) => {
    expect(readCsv(text)).toEqual({
      ok: false,
      reason: 'No table found: there is no line with at least one cell.',
    });
  });

  test('refuses an open quote, and says where', () => {
    expect(readCsv('a,b\n"c,d\n')).toEqual({
      ok: false,
      reason: 'Line 2: a quote is opened and never closed.',
    });
  });
});

describe('reading a number', () => {
  test.each([
    ['1.5', '.', 1.5],
    ['1,5', ',', 1.5],
    ['1.234,5', ',', 1234.5],
    ['1,234.5', '.', 1234.5],
    ['1 234,5', ',', 1234.5],
    ['−3', '.', -3],
    ['.5', '.', 0.5],
    ['2e-3', '.', 0.002],
    ['', '.', null],
    ['abc', '.', null],
    ['1.2.3', '.', null],
    ['0x10', '.', null],
    ['1e999', '.', null],
  ] as const)('%j with decimal %s is %s', (cell, decimal, value) => {
    expect(readNumber(cell, decimal)).toBe(value);
  });
});

describe('any text', () => {
  test('is read or refused, and never throws', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(typeof readCsv(text).ok).toBe('boolean');
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
