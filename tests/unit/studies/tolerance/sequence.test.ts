import { describe, expect, test } from 'vitest';
import { boxSequence } from '../../../../src/studies/tolerance/sequence.ts';

const points = (sequence: ReturnType<typeof boxSequence>, count: number, dimensions: number) => {
  const out = new Float64Array(dimensions);
  return Array.from({ length: count }, (_, i) => {
    sequence.read(i, out);
    return Array.from(out);
  });
};

describe('the points of boxes', () => {
  test('of single boxes fill every sixteenth of every axis alike', () => {
    const all = points(boxSequence(2, 3, { seed: 3, boxes: 1, draws: 256 }), 256, 5);
    for (let d = 0; d < 5; d++) {
      const counts = new Array<number>(16).fill(0);
      for (const point of all) {
        const place = Math.floor(16 * (point[d] as number));
        counts[place] = (counts[place] as number) + 1;
      }
      expect(counts).toEqual(new Array(16).fill(16));
    }
  });

  test('of a batch share what is drawn once, and nothing else', () => {
    const all = points(boxSequence(2, 3, { seed: 3, boxes: 4, draws: 64 }), 64, 5);
    for (let i = 0; i < 64; i++) {
      const first = all[i - (i % 4)] as number[];
      expect(all[i]?.slice(0, 2)).toEqual(first.slice(0, 2));
      if (i % 4 > 0) expect(all[i]?.slice(2)).not.toEqual(first.slice(2));
    }
    expect(new Set(all.map(([first]) => first)).size).toBe(16);
    expect(new Set(all.map((point) => point[2])).size).toBe(64);
  });

  // One in eight boxes fails by what is its own: 0.875⁸ = 34 % of batches of eight stay whole. Drawn in order, every batch
  // would have exactly one that fails.
  test('within a batch are as good as independent', () => {
    const batches = 1024;
    const sequence = boxSequence(1, 1, { seed: 5, boxes: 8, draws: 8 * batches });
    const all = points(sequence, 8 * batches, 2);
    let whole = 0;
    for (let b = 0; b < batches; b++)
      if (all.slice(8 * b, 8 * b + 8).every((point) => (point[1] as number) < 0.875)) whole++;
    expect(Math.abs(whole / batches - 0.875 ** 8)).toBeLessThan(4 * Math.sqrt((0.34 * 0.66) / batches));
  });

  test('are the same in any order', () => {
    const make = () => boxSequence(2, 2, { seed: 9, boxes: 3, draws: 30 });
    const [one, other] = [make(), make()];
    const forth = points(one, 30, 4);
    const out = new Float64Array(4);
    for (let i = 29; i >= 0; i--) {
      other.read(i, out);
      expect(Array.from(out)).toEqual(forth[i]);
    }
  });
});
