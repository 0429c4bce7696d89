import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { designChecksum } from '../../../src/model/designChecksum.ts';
import { parseDesignText } from '../../../src/model/designText.ts';
import { exampleById, examples } from '../../../src/model/examples/examples.ts';
import { serialiseDesign } from '../../../src/model/serialiseDesign.ts';

const eight = exampleById('eightResistors');

describe('the checksum of a design', () => {
  test('is what any program for SHA-256 tells of the saved file, its first ten digits', () => {
    const digest = createHash('sha256').update(serialiseDesign(eight), 'utf8').digest('hex');
    expect(designChecksum(eight)).toBe(digest.slice(0, 10));
  });

  test('is the same after saving and opening, in whatever order the file has its keys', () => {
    const raw = JSON.parse(serialiseDesign(eight)) as Record<string, unknown>;
    const turned = JSON.stringify(Object.fromEntries(Object.entries(raw).reverse()));
    const read = parseDesignText(turned);
    if (!read.ok) throw new Error('not read');
    expect(designChecksum(read.design)).toBe(designChecksum(eight));
  });

  test('tells revisions apart, and every example from the others', () => {
    const revised = [
      eight,
      { ...eight, revision: 'C' },
      { ...eight, remark: `${eight.remark} ` },
      { ...eight, sink: { ...eight.sink, length_m: eight.sink.length_m + 1e-6 } },
      { ...eight, positions: eight.positions.map((each, i) => ({ ...each, flipped: i === 3 })) },
      ...examples.filter(({ id }) => id !== 'eightResistors').map(({ design }) => design),
    ];
    expect(new Set(revised.map(designChecksum)).size).toBe(revised.length);
  });
});
