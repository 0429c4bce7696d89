import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import type { Design } from '../../../src/model/design.ts';
import { exampleById, examples } from '../../../src/model/examples/examples.ts';
import { fields } from '../../../src/model/fields.ts';
import { getAt } from '../../../src/model/path.ts';
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

  test('two dozen have three parts, some of them off, and do not fail', () => {
    const design = exampleById('twoDozen');
    expect(new Set(design.positions.map(({ part }) => part)).size).toBe(3);
    expect(design.positions.filter(({ on }) => !on).length).toBeGreaterThan(2);
    expect(verdictOf(design)).not.toBe('fails');
    expect(solveSystem(toCore(design)).ok).toBe(true);
  });
});
