import { describe, expect, test } from 'vitest';
import { designFileName, parseDesignText, serialiseDesign, tooLarge } from '../../../src/io/designFile.ts';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { examples } from '../../../src/model/examples/examples.ts';

const reasonOf = (text: string) => {
  const read = parseDesignText(text);
  return read.ok ? null : read.problems[0]?.reason;
};

describe('a design file', () => {
  test('gives back the very design that was saved, and the same text again', () => {
    for (const { design } of examples) {
      const text = serialiseDesign(design);
      const read = parseDesignText(text);
      expect(read).toEqual({ ok: true, design, notes: [] });
      expect(read.ok && serialiseDesign(read.design)).toBe(text);
    }
  });

  test('has the keys in one order, whatever order they came in', () => {
    const shuffled = Object.fromEntries(Object.entries(defaultDesign).toReversed()) as typeof defaultDesign;
    expect(serialiseDesign(shuffled)).toBe(serialiseDesign(defaultDesign));
    expect(
      serialiseDesign(defaultDesign).startsWith('{\n  "format": "throughfin-design",\n  "version": 1,\n'),
    ).toBe(true);
  });

  test('keeps short rows on one line and ends in a line', () => {
    const text = serialiseDesign(defaultDesign);
    expect(text).toContain('\n      { "flow_m3PerS": 0.002, "dp_Pa": 39 },\n');
    expect(text).toContain('\n  "extras": [],\n');
    expect(text.endsWith('}\n')).toBe(true);
  });

  test('may begin with a byte order mark', () => {
    expect(parseDesignText(`\ufeff${serialiseDesign(defaultDesign)}`)).toMatchObject({ ok: true });
  });

  test.each([[''], ['  \n\t'], ['\ufeff']])('is refused when it is empty: %j', (text) => {
    expect(reasonOf(text)).toBe('The file is empty.');
  });

  test('is refused with line and column where it is no JSON', () => {
    const text = serialiseDesign(defaultDesign).replace('"version": 1,', '"version": 1');
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

  test('is named after its title and revision', () => {
    expect(designFileName({ ...defaultDesign, title: 'Eight: in a / row!', revision: 'B' })).toBe(
      'eight-in-a-row-b.throughfin.json',
    );
    expect(designFileName({ ...defaultDesign, title: 'Lüfterkasten Ω', revision: '' })).toBe(
      'lüfterkasten-ω.throughfin.json',
    );
    expect(designFileName({ ...defaultDesign, title: '../..', revision: '' })).toBe(
      'fan-box.throughfin.json',
    );
  });
});
