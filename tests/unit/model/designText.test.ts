import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { parseDesignText, tooLarge } from '../../../src/model/designText.ts';
import { serialiseDesign } from '../../../src/model/serialiseDesign.ts';

const reasonOf = (text: string) => {
  const read = parseDesignText(text);
  return read.ok ? null : read.problems[0]?.reason;
};

describe('the text of a design file', () => {
  test('may begin with a byte order mark', () => {
    expect(parseDesignText(`\ufeff${serialiseDesign(defaultDesign)}`)).toMatchObject({ ok: true });
  });

  test.each([[''], ['  \n\t'], ['\ufeff']])('is refused when it is empty: %j', (text) => {
    expect(reasonOf(text)).toBe('The file is empty.');
  });

  test('is refused with line and column where it is no JSON', () => {
    const text = serialiseDesign(defaultDesign).replace('"version": 5,', '"version": 5');
    expect(reasonOf(text)).toBe(
      'Not a readable JSON file: line 4, column 3: a comma or a closing bracket should stand here.',
    );
    expect(reasonOf('flow,pressure\n0,60\n')).toBe(
      'Not a readable JSON file: line 1, column 1: a value should stand here.',
    );
  });

  test('is refused unread when it is huge', () => {
    expect(reasonOf(' '.repeat(5_000_001))).toBe('The file has 5.1 MB; a design file has at most 5 MB.');
    expect(tooLarge(7_200_000)).toBe('The file has 7.2 MB; a design file has at most 5 MB.');
  });

  test('is refused when a number is too large for any number', () => {
    const text = serialiseDesign(defaultDesign).replace('"T_K": 308.15', '"T_K": 1e999');
    expect(parseDesignText(text)).toMatchObject({ ok: false, problems: [{ path: 'room.T_K' }] });
  });
});
