import { describe, expect, test } from 'vitest';
import { designFileName } from '../../../src/io/designFile.ts';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { parseDesignText } from '../../../src/model/designText.ts';
import { examples } from '../../../src/model/examples/examples.ts';
import { serialiseDesign } from '../../../src/model/serialiseDesign.ts';

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
      serialiseDesign(defaultDesign).startsWith('{\n  "format": "throughfin-design",\n  "version": 5,\n'),
    ).toBe(true);
  });

  test('keeps short rows on one line and ends in a line', () => {
    const text = serialiseDesign(defaultDesign);
    expect(text).toContain('\n      { "flow_m3PerS": 0.002, "dp_Pa": 39 },\n');
    expect(text).toContain('\n  "extras": [],\n');
    expect(text.endsWith('}\n')).toBe(true);
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
