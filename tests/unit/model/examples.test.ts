import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import type { Design } from '../../../src/model/design.ts';
import { exampleById, examples } from '../../../src/model/examples/examples.ts';
import { fields } from '../../../src/model/fields.ts';
import { getAt } from '../../../src/model/path.ts';
import { readDesign } from '../../../src/model/readDesign.ts';
import { toCore } from '../../../src/model/toCore.ts';

const verdictOf = (design: Design) => {
  const outcome = solveSystem(toCore(design));
  return outcome.ok ? outcome.verdict.state : outcome.reason;
};

describe('the examples', () => {
  test('say that they are invented, in the design and in words', () => {
    for (const { design } of examples) {
      expect(design.invented).toBe(true);
      expect(design.remark).toContain('Invented');
      for (const { name } of [...design.parts, design.fan]) expect(name).toContain('Invented');
    }
  });

  test('have a name each, and the frozen file of version 2 says the same as the one with several flows', () => {
    expect(new Set(examples.map(({ design }) => design.title)).size).toBe(examples.length);
    const url = '../../fixtures/designs/v2/severalOperatingPoints.throughfin.json';
    const raw = JSON.parse(readFileSync(new URL(url, import.meta.url), 'utf8')) as unknown;
    const read = readDesign(raw);
    expect(read.ok && toCore(read.design)).toEqual(toCore(exampleById('dippingCurve')));
  });

  test('stay within what is usual', () => {
    for (const { design } of examples) {
      for (const field of fields) {
        if (field.kind !== 'quantity' || field.usual === null || field.pattern.includes('[]')) continue;
        const value = getAt(design, field.pattern) as number;
        expect(value, field.pattern).toBeGreaterThanOrEqual(field.usual[0]);
        expect(value, field.pattern).toBeLessThanOrEqual(field.usual[1]);
      }
    }
  });

  test('eight in a row holds with little to spare, and not without its baffle', () => {
    const design = exampleById('eightResistors');
    expect(verdictOf(design)).toBe('little');
    expect(verdictOf({ ...design, baffle: { ...design.baffle, fitted: false } })).toBe('fails');
  });

  test('one resistor between two sinks holds', () => {
    expect(verdictOf(exampleById('onePair'))).toBe('holds');
  });

  test('the fan with a dip meets its box three times and can stay at two of them', () => {
    const outcome = solveSystem(toCore(exampleById('dippingCurve')));
    if (!outcome.ok) throw new Error(outcome.reason);
    expect(outcome.air.intersections.map(({ stable, used }) => [stable, used])).toEqual([
      [true, false],
      [false, false],
      [true, true],
    ]);
    const [first, second, third] = outcome.air.intersections.map(({ flow_m3PerS }) => flow_m3PerS * 3600);
    // Far enough apart that a change in one loss leaves all three.
    expect((second ?? 0) - (first ?? 0)).toBeGreaterThan(1);
    expect((third ?? 0) - (second ?? 0)).toBeGreaterThan(1);
  });

  test('two dozen have three parts, some of them off, and do not fail', () => {
    const design = exampleById('twoDozen');
    expect(new Set(design.positions.map(({ part }) => part)).size).toBe(3);
    expect(design.positions.filter(({ on }) => !on).length).toBeGreaterThan(2);
    expect(verdictOf(design)).not.toBe('fails');
    expect(solveSystem(toCore(design)).ok).toBe(true);
  });
});
