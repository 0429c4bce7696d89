import { describe, expect, test } from 'vitest';
import { assumptions } from '../../src/core/assumptions.ts';
import { type Card, checkRange } from '../../src/core/card.ts';
import { cards } from '../../src/core/cards.ts';
import { sources } from '../../src/core/sources.ts';
import { mistakesIn, standsIn } from '../helpers/equations.ts';
import { projectFiles } from '../helpers/projectFiles.ts';
import { allowedDeviation, published } from '../helpers/published.ts';

const byId = cards.map((card) => [card.id, card] as const);
const files = projectFiles('src', ['.ts', '.tsx']);
const made = files.filter(({ text }) => /^export const card = defineCard/m.test(text));
const idOf = (text: string) => /\bid: '([^']+)'/.exec(text)?.[1] ?? '';

/** The folder of the core that has the method of this id. */
const folderOf = (id: string) =>
  made
    .find(({ text }) => idOf(text) === id)
    ?.path.split('/')
    .at(-2) ?? 'core';

/** Notes on one variable at one value. */
const judge = (card: Card, variable: string, value: number) =>
  checkRange(card, { [variable]: value }).filter((note) => note.variable === variable);

/** A step past a bound, large enough to be another number and small beside the bound. */
const past = (bound: number) => Math.max(Math.abs(bound), 1e-6) * 1e-6;

describe.each(byId)('the card %s', (_, card) => {
  test('says what, from where and with which assumptions', () => {
    for (const text of [
      card.id,
      card.title,
      card.equation,
      card.result.name,
      card.result.unit,
      card.example.where,
    ]) {
      expect(text.trim()).not.toBe('');
    }
    expect(Object.keys(sources)).toContain(card.source.key);
    for (const key of card.assumes) expect(Object.keys(assumptions)).toContain(key);
  });

  test('has a symbol for each variable, its constants and its result, and they stand in the equation', () => {
    const { equation, symbols, aside = {}, constants = [], result, example } = card;
    expect(Object.keys(symbols).sort()).toEqual(Object.keys(example.given).sort());
    const all = [...Object.values(symbols), ...constants.map(({ symbol }) => symbol)];
    expect(new Set(all).size).toBe(all.length);
    for (const [variable, symbol] of Object.entries(symbols)) {
      const why = aside[variable];
      expect(standsIn(symbol, equation), `${symbol} for ${variable}`).toBe(why === undefined);
      expect(why).not.toBe('');
    }
    for (const { symbol } of constants) expect(standsIn(symbol, equation), symbol).toBe(true);
    expect(standsIn(result.symbol, equation)).toBe(true);
  });

  test('writes its equation so that a program can read it', () => {
    expect(mistakesIn(card.equation)).toEqual([]);
  });

  test('bounds only its own variables, in order, and says whence', () => {
    const bounds = Object.entries(card.range);
    for (const [variable, bound] of bounds) {
      const [low, high] = bound ?? [null, null];
      expect(Object.keys(card.example.given)).toContain(variable);
      expect(low !== null || high !== null, `${variable} has no bound`).toBe(true);
      expect((low ?? Number.NEGATIVE_INFINITY) < (high ?? Number.POSITIVE_INFINITY)).toBe(true);
    }
    if (card.rangeFrom === 'not stated') expect(bounds).toEqual([]);
  });

  test('has a scatter if and only if somebody states one', () => {
    const { sigma, from } = card.scatter;
    expect(sigma === null).toBe(from === 'not stated');
    if (sigma !== null) expect(sigma).toBeGreaterThanOrEqual(0);
  });

  test('computes its example as printed', () => {
    const { given, printed, kind, where, within, because } = card.example;
    expect(within === undefined).toBe(because === undefined);
    const other = within === undefined || because === undefined ? undefined : { within, because };
    // Half the value is what a single printed digit allows; beyond that an example would prove nothing.
    expect(allowedDeviation(printed, other)[1]).toBeLessThan(0.51 * Math.abs(Number(printed)) || 1e-12);
    const { name, unit } = card.result;
    const source = published({
      source: card.source.key,
      where,
      kind,
      methods: [card.id],
      subject: folderOf(card.id),
      title: `${card.title}: example of its card`,
    });
    source.says(unit === '1' ? name : `${name} [${unit}]`, card.evaluate(given), printed, other);
  });

  test('gives no note at the inner edge of its range and one beyond it', () => {
    for (const [variable, bound] of Object.entries(card.range)) {
      const [low, high] = bound ?? [null, null];
      for (const [edge, outwards] of [
        [low, -1],
        [high, 1],
      ] as const) {
        if (edge === null) continue;
        expect(judge(card, variable, edge)).toEqual([]);
        expect(judge(card, variable, edge + outwards * past(edge))).toHaveLength(1);
      }
    }
  });
});

describe('the registry of cards', () => {
  test('has every id once', () => {
    const ids = cards.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test('has the card of every method', () => {
    const known = new Set(cards.map(({ id }) => id));
    const left = made.filter(({ text }) => !known.has(idOf(text)));
    expect(left.map(({ path }) => path)).toEqual([]);
    expect(made).toHaveLength(cards.length);
  });

  test.each([
    ['source', 'sources', Object.keys(sources)],
    ['assumption', 'assumptions', Object.keys(assumptions)],
  ])('leaves no %s unused', (_, table, keys) => {
    const texts = files.filter(({ path }) => path !== `src/core/${table}.ts`).map(({ text }) => text);
    const unused = keys.filter(
      (key) => !texts.some((text) => text.includes(`'${key}'`) || text.includes(`${table}.${key}`)),
    );
    expect(unused).toEqual([]);
  });
});
