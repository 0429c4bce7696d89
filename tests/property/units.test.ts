import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Dimension, dimensionNames, dimensions } from '../../src/units/dimensions.ts';
import { editText } from '../../src/units/editText.ts';
import { formatNumber } from '../../src/units/formatNumber.ts';
import { formatQuantity } from '../../src/units/formatQuantity.ts';
import { describeProblem, parseQuantity } from '../../src/units/parseQuantity.ts';
import { toSI, type Unit } from '../../src/units/unit.ts';

const runs = { seed: 20261125, numRuns: 300 };
const everyUnit: [Dimension, string, Unit][] = dimensionNames.flatMap((name) =>
  dimensions[name].units.map((unit): [Dimension, string, Unit] => [name, unit.key, unit]),
);
/** Ordinary sizes as a number in a unit, either sign, all decades alike. */
const amount = fc
  .tuple(fc.double({ min: 1, max: 10, noNaN: true }), fc.integer({ min: -6, max: 8 }), fc.constantFrom(1, -1))
  .map(([mantissa, decade, sign]) => sign * mantissa * 10 ** decade);
/** No colder than 1 K; nearer to zero the digits are used up by the 273.15 of the scale. */
const possible = (value: number, dimension: Dimension) => dimension !== 'temperature' || value >= 1;

describe('text and value', () => {
  test.each(everyUnit)(
    '%s in %s: what is edited is what was there, to twelve digits',
    (dimension, key, unit) => {
      fc.assert(
        fc.property(amount, (number) => {
          const value = toSI(number, unit);
          fc.pre(possible(value, dimension));
          const text = editText(value, dimension, key);
          for (const typed of [text, `${text} ${unit.symbol}`]) {
            const read = parseQuantity(typed, dimension, key);
            expect(read).toMatchObject({ ok: true, unit: key });
            expect(read.ok && Math.abs(read.value - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
          }
        }),
        runs,
      );
    },
  );

  test.each(everyUnit)('%s in %s: decimals that were typed come back as typed', (dimension, key, unit) => {
    const typed = fc.tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 4 }));
    fc.assert(
      fc.property(typed, ([digits, decimals]) => {
        const text = String(digits / 10 ** decimals);
        const read = parseQuantity(text, dimension, key);
        if (!read.ok) throw new Error(text);
        expect(editText(read.value, dimension, key), unit.symbol).toBe(text);
      }),
      runs,
    );
  });

  test.each(everyUnit)(
    '%s in %s: what is shown can be typed again, to the digits shown',
    (dimension, key, unit) => {
      fc.assert(
        fc.property(amount, fc.integer({ min: 2, max: 8 }), (number, digits) => {
          const value = toSI(number, unit);
          fc.pre(possible(value, dimension));
          const text = formatQuantity(value, dimension, key, { digits });
          const read = parseQuantity(text, dimension, key);
          if (!read.ok) throw new Error(text);
          const lastDecimal = dimension === 'temperature' ? 0.005 : 0;
          const allowed = Math.max(
            0.5 * 10 ** (Math.floor(Math.log10(Math.abs(number))) - digits + 1),
            lastDecimal,
          );
          const step = Math.abs(toSI(1, unit) - toSI(0, unit));
          // The last term is the float dust of the two conversions.
          expect(Math.abs(read.value - value)).toBeLessThanOrEqual(
            allowed * step * 1.000001 + 1e-12 * Math.abs(value),
          );
        }),
        runs,
      );
    },
  );
});

describe('a number to read', () => {
  test('of ordinary size is plain digits: no exponent, no NaN, never minus nothing', () => {
    const ordinary = fc.oneof(amount, fc.constantFrom(0, -0), fc.integer());
    fc.assert(
      fc.property(
        ordinary,
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 20 }),
        (value, digits, decimals) => {
          for (const text of [formatNumber(value, digits), formatNumber(value, digits, decimals)]) {
            expect(text).toMatch(/^−?(?:\d{1,4}|\d{1,3}(?:\u202f\d{3})+)(?:\.\d*[1-9])?$/);
            expect(text).not.toMatch(/^−0(?:\.0*)?$/);
          }
        },
      ),
      { ...runs, numRuns: 2000 },
    );
  });

  test('of any size has words for it', () => {
    const any = fc.double({ noNaN: true, noDefaultInfinity: true });
    fc.assert(
      fc.property(any, fc.integer({ min: 1, max: 17 }), (value, digits) => {
        expect(formatNumber(value, digits)).toMatch(/^−?\d[\d\u202f.]*(?:×10⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+)?$/);
      }),
      { ...runs, numRuns: 2000 },
    );
  });
});

describe('any text at all', () => {
  const symbols = everyUnit.map(([, , unit]) => unit.symbol);
  const pieces = fc.constantFrom(
    ...symbols,
    ...'0123456789.,/-+−eE×^½⅞\'"″ \u202f',
    '10',
    '000',
    '__proto__',
    'NaN',
    'Ω',
    '𝟗',
  );
  const like = fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join(''));
  const field = fc.constantFrom(...dimensionNames);

  test.each([
    ['of any characters', fc.oneof(fc.string(), fc.string({ unit: 'binary' }))],
    ['that looks like a quantity', like],
  ])('%s is a finite value or a sentence, never a throw', (_what, texts) => {
    fc.assert(
      fc.property(texts, field, (text, dimension) => {
        const { metric, noun, units } = dimensions[dimension];
        const read = parseQuantity(text, dimension, metric);
        if (read.ok) {
          expect(Number.isFinite(read.value)).toBe(true);
          expect(Object.is(read.value, -0)).toBe(false);
          expect(units.map(({ key }) => key)).toContain(read.unit);
          return;
        }
        const sentence = describeProblem(read);
        expect(sentence).toMatch(/^\S.{10,}\.$/);
        expect(sentence.includes(noun) || read.reason === 'ambiguous').toBe(true);
      }),
      { ...runs, numRuns: 10_000 },
    );
  });

  test('however long is refused without being read', () => {
    for (const text of [
      '1'.repeat(1e6),
      '1 '.repeat(1e6),
      '1,'.repeat(1e6),
      '1½'.repeat(1e6),
      '1'.padEnd(1e6, 'ft'),
    ]) {
      expect(parseQuantity(text, 'length', 'mm')).toMatchObject({ ok: false, reason: 'notANumber' });
    }
    expect(parseQuantity(' '.repeat(1e6), 'length', 'mm')).toMatchObject({ ok: false, reason: 'empty' });
  });
});
