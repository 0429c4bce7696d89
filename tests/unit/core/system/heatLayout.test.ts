import { describe, expect, test } from 'vitest';
import { bankGeometry } from '../../../../src/core/system/geometry.ts';
import { heatLayout } from '../../../../src/core/system/heatLayout.ts';
import type { SystemInput } from '../../../../src/core/system/input.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';

const base = sampleInput(3);
const layoutOf = (input: SystemInput) => heatLayout(input, bankGeometry(input));

describe('heatLayout', () => {
  test('is one and the same while only measures change', () => {
    const layout = layoutOf(base);
    expect(layoutOf({ ...base, sink: { ...base.sink, plate_m: 3e-3 } })).toBe(layout);
    expect(layoutOf(sampleInput(3, 1))).toBe(layout);
  });

  test.each([
    ['another number of resistors', sampleInput(4)],
    ['a missing sink', { ...base, hasLastSink: false }],
    ['another way of the second face', { ...base, secondFace: { ...base.secondFace, way: 'bonded' } }],
    [
      'a flipped resistor',
      { ...base, positions: base.positions.map((p, r) => ({ ...p, flipped: r === 2 })) },
    ],
  ] satisfies [string, SystemInput][])(
    'is another with %s, and the first one again afterwards',
    (_, other) => {
      const first = layoutOf(base);
      expect(layoutOf(other)).not.toEqual(first);
      expect(layoutOf(base)).toEqual(first);
    },
  );

  test('joins every node to the datum by some way', () => {
    const { topology } = layoutOf(base);
    const reached = new Set([-1]);
    for (let round = 0; round < topology.nodeCount; round++) {
      topology.a.forEach((a, i) => {
        const b = topology.b[i] as number;
        if (reached.has(b)) reached.add(a);
        else if (reached.has(a)) reached.add(b);
      });
    }
    expect(reached.size).toBe(topology.nodeCount + 1);
  });
});
