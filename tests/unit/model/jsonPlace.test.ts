import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findJsonFault } from '../../../src/model/jsonPlace.ts';

describe('the place where JSON breaks', () => {
  test.each([
    ['{"a": 1,\n  "b": }', 2, 8, 'a value should stand here'],
    ['{"a": 1,\n "b" 2}', 2, 6, 'a colon should stand here'],
    ['{"a": 1,}', 1, 9, 'a key in "double quotes" should stand here'],
    ['{a: 1}', 1, 2, 'a key in "double quotes" or } should stand here'],
    ["{'a': 1}", 1, 2, 'a key in "double quotes" or } should stand here'],
    ['[1, 2\n3]', 2, 1, 'a comma or a closing bracket should stand here'],
    ['[1, 2}', 1, 6, 'a comma or a closing bracket should stand here'],
    ['[1,]', 1, 4, 'a value should stand here'],
    ['{"a": [1, 2', 1, 12, 'a comma or a closing bracket should stand here, but the file ends'],
    ['{} {}', 1, 4, 'the file should end here'],
    ['1,5', 1, 2, 'the file should end here'],
    ['[01]', 1, 2, 'a value or ] should stand here'],
    ['[.5]', 1, 2, 'a value or ] should stand here'],
    ['[NaN]', 1, 2, 'a value or ] should stand here'],
    ['"open', 1, 1, 'a value should stand here'],
    ['', 1, 1, 'a value should stand here, but the file ends'],
  ])('of %j is line %i, column %i', (text, line, column, reason) => {
    expect(findJsonFault(text)).toEqual({ line, column, reason });
  });

  test('is nowhere in JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(undefined, 2, '\t'), (value, space) => {
        expect(findJsonFault(JSON.stringify(value, null, space))).toBeNull();
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test('is found exactly when the engine refuses the text', () => {
    const pieces = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"',
      '1',
      '-',
      '.5',
      '1e5',
      'true',
      'nul',
      ' ',
      '\n',
      '\\',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 8 }), (parts) => {
        const text = parts.join('');
        expect(findJsonFault(text) === null).toBe(isJson(text));
      }),
      { seed: 20261125, numRuns: 3000 },
    );
  });

  test('is found in deep nesting without running out of stack', () => {
    expect(findJsonFault('['.repeat(200_000))).toMatchObject({ line: 1, column: 200_001 });
  });
});

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
