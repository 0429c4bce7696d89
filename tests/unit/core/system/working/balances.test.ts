import { describe, expect, test } from 'vitest';
import { assumptions } from '../../../../../src/core/assumptions.ts';
import { balances } from '../../../../../src/core/system/working/balances/balances.ts';
import { suffixOfName } from '../../../../../src/units/suffix.ts';
import { mistakesIn, standsIn } from '../../../../helpers/equations.ts';

describe('the balances between the methods', () => {
  test('have every id once', () => {
    const ids = balances.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test.each(balances.map((balance) => [balance.id, balance] as const))(
    '%s is written so that its symbols stand in it',
    (_, { title, equation, symbols, words = {}, result, assumes = [] }) => {
      expect(title).not.toBe('');
      expect(mistakesIn(equation)).toEqual([]);
      for (const [variable, symbol] of Object.entries(symbols)) {
        // One that comes any number of times stands with an index.
        const written = symbol.replace('#', 'i');
        expect(standsIn(written, equation), `${written} for ${variable}`).toBe(true);
        if (variable.includes('_')) expect(suffixOfName(variable.replace('#', ''))).not.toBeNull();
      }
      expect(standsIn(result.symbol, equation)).toBe(true);
      if (result.variable.includes('_')) expect(suffixOfName(result.variable)).not.toBeNull();
      for (const variable of Object.keys(words)) expect(Object.keys(symbols)).toContain(variable);
      for (const key of assumes) expect(Object.keys(assumptions)).toContain(key);
    },
  );
});
