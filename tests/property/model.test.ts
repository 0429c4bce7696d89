import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fanCurveProblem } from '../../src/core/fan/fanCurve.ts';
import { checkDesign } from '../../src/model/check.ts';
import { anotherFan, defaultDesign } from '../../src/model/defaults.ts';
import { designSchema } from '../../src/model/design.ts';
import { parseDesignText } from '../../src/model/designText.ts';
import { fields } from '../../src/model/fields.ts';
import { setAt } from '../../src/model/path.ts';
import { readDesign } from '../../src/model/readDesign.ts';
import { serialiseDesign } from '../../src/model/serialiseDesign.ts';
import { toCore } from '../../src/model/toCore.ts';
import { wordProblem } from '../../src/model/wordProblem.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';

const runs = { seed: 20261125, numRuns: 300, endOnFailure: true };
const flavours = ['hard', 'usual'] as const;
const inputs = fields.filter(({ pattern }) => !pattern.includes('[]')).map(({ pattern }) => pattern);

describe('any design made to fit', () => {
  test.each(flavours)('passes the schema and the check (%s)', (flavour) => {
    fc.assert(
      fc.property(arbitraryDesign(flavour), (design) => {
        const parsed = designSchema.safeParse(design);
        expect(parsed.success ? [] : parsed.error.issues).toEqual([]);
        expect(checkDesign(design)).toEqual([]);
      }),
      runs,
    );
  });

  test.each(flavours)('is the same design after saving and opening (%s)', (flavour) => {
    fc.assert(
      fc.property(arbitraryDesign(flavour), (design) => {
        expect(parseDesignText(serialiseDesign(design))).toEqual({ ok: true, design, notes: [] });
      }),
      runs,
    );
  });

  test('has a fan curve that the core takes, and so has any other that the check takes', () => {
    const point = fc.record({ flow_m3PerS: fc.nat(6).map((n) => n / 1000), dp_Pa: fc.nat(6) });
    fc.assert(
      fc.property(fc.array(point, { minLength: 2, maxLength: 5 }), (curve) => {
        const found = checkDesign(setAt(defaultDesign, 'fan.curve', curve));
        if (found.length === 0) expect(fanCurveProblem(curve)).toBeNull();
      }),
      { ...runs, numRuns: 3000 },
    );
  });

  test('has further fans whose curves and hubs the check minds as those of the first', () => {
    const kind = fc.record({
      hub_m: fc.constantFrom(0.01, 0.05, 0.06),
      opening_m: fc.constantFrom(0.05, 0.055),
    });
    fc.assert(
      fc.property(kind, fc.nat(2), (measures, index) => {
        const first = checkDesign({ ...defaultDesign, fan: { ...defaultDesign.fan, ...measures } });
        const others = Array.from({ length: 3 }, (_, at) => ({
          ...anotherFan(defaultDesign.fan, at),
          ...(at === index ? measures : {}),
        }));
        const found = checkDesign({ ...defaultDesign, moreFans: others });
        expect(found.map(({ code, path }) => [code, path])).toEqual(
          first.map(({ code, path }) => [code, path.replace('fan', `moreFans[${index}]`)]),
        );
      }),
      runs,
    );
  });

  test('tells the core finite numbers only', () => {
    fc.assert(
      fc.property(arbitraryDesign(), (design) => {
        expect(JSON.stringify(toCore(design))).toBe(
          JSON.stringify(toCore(design), (_, v) =>
            Number.isFinite(v) || typeof v !== 'number' ? v : 'not finite',
          ),
        );
      }),
      runs,
    );
  });
});

describe('any value at all', () => {
  test('in one place of a file is read or refused with a sentence, never thrown', () => {
    fc.assert(
      fc.property(fc.constantFrom(...inputs), fc.anything(), (path, value) => {
        const read = readDesign(setAt(defaultDesign, path, value));
        if (read.ok) return;
        for (const { reason } of read.problems) expect(reason).toMatch(/^\S.*\.$/s);
      }),
      { ...runs, numRuns: 2000 },
    );
  });

  test('instead of a file is refused', () => {
    fc.assert(
      fc.property(fc.anything(), (raw) => {
        expect(readDesign(raw).ok).toBe(false);
      }),
      runs,
    );
  });

  test('that the schema takes is checked without a throw, and every finding has words', () => {
    const numbers = fields.filter((field) => field.kind === 'quantity' && !field.pattern.includes('[]'));
    const change = fc.constantFrom(...numbers).chain((field) => {
      const [low, high] = field.kind === 'quantity' ? field.hard : [0, 0];
      return fc.tuple(fc.constant(field.pattern), fc.double({ min: low, max: high, noNaN: true }));
    });
    fc.assert(
      fc.property(fc.array(change, { maxLength: 5 }), (changes) => {
        const design = changes.reduce((before, [path, value]) => setAt(before, path, value), defaultDesign);
        for (const found of checkDesign(design)) expect(wordProblem(found, 'metric')).toMatch(/^[^{}]*\.$/);
      }),
      { ...runs, numRuns: 1000 },
    );
  });
});
