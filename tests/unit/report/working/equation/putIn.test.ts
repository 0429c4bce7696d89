import { expect, test } from 'vitest';
import { plainText } from '../../../../../src/report/working/equation/equationTree.ts';
import { putIn } from '../../../../../src/report/working/equation/putIn.ts';
import { readEquation } from '../../../../../src/report/working/equation/readEquation.ts';
import type { WorkingSymbol } from '../../../../../src/report/working/types.ts';

const value = (symbol: string, amount: number, unit = '1'): WorkingSymbol => ({
  symbol,
  says: symbol,
  value: `${amount}`,
  si: `${amount} ${unit}`,
  amount,
  unit,
  from: 'input',
  step: null,
});

const filled = (equation: string, symbols: readonly WorkingSymbol[], result: WorkingSymbol) =>
  putIn(readEquation(equation), symbols, result).map(plainText);

test('numbers take the places of names, and the result stands at the end with its unit', () => {
  expect(
    filled('K = 0.42·(1 − σ²), on the channel velocity', [value('σ', 0.61)], value('K', 0.26372)),
  ).toEqual(['K=0.42·(1−0.61²)=0.2637']);
  expect(
    filled(
      'ΔT = P/(ρ·Q·c_p)',
      [value('P', 60, 'W'), value('ρ', 1.1), value('Q', 0.01), value('c_p', 1006)],
      value('ΔT', 5.42, 'K'),
    ),
  ).toEqual(['ΔT=60/(1.1·0.01·1006)=5.42K']);
});

test('every line is filled, each with what came out of it', () => {
  expect(
    filled(
      'η = tanh(mH)/(mH), m = √(2h/(k·t))',
      [value('m', 31.2, '1/m'), value('H', 0.02, 'm'), value('h', 50), value('k', 170), value('t', 0.0006)],
      value('η', 0.888),
    ),
  ).toEqual(['η=tanh(31.2·0.02)/(31.2·0.02)=0.888', 'm=√(2·50/(170·6·10⁻⁴))=31.21/m']);
});

test('very small and negative numbers are written so that they multiply', () => {
  expect(filled('q = a·b²', [value('a', -3), value('b', 1.825e-5)], value('q', -9.99e-10))).toEqual([
    'q=(−3)·(1.825·10⁻⁵)²=−9.99·10⁻¹⁰',
  ]);
});

test('a table has nothing to put in: the result alone', () => {
  expect(filled('K_d = table over α', [value('α', 0.2)], value('K_d', 1.3))).toEqual(['K_d=1.3']);
});

test('a name of several pieces goes before its parts', () => {
  expect(
    filled('y = f·Re + p(T)', [value('f·Re', 90), value('p(T)', 5), value('f', 1)], value('y', 95)),
  ).toEqual(['y=90+5=95']);
});

test('a result that the equation does not name is told on a line of its own', () => {
  expect(filled('a = 2·b', [value('b', 3)], value('z', 6))).toEqual(['a=2·3', 'z=6']);
});

test('a sum is written out where its terms are known by number', () => {
  expect(
    filled(
      'θ = (P + Σ G_i·θ_i)/(G_0 + Σ G_i)',
      [value('P', 4), value('G_1', 2), value('G_2', 3), value('θ_1', 10), value('θ_2', 20), value('G_0', 1)],
      value('θ', 14, 'K'),
    ),
  ).toEqual(['θ=(4+(2·10+3·20))/(1+(2+3))=14K']);
  expect(filled('E = Σ 10^(L_i/10)', [value('L_1', 30)], value('E', 1000))).toEqual(['E=(10^(30/10))=1000']);
  expect(filled('y = Σ S_m·a', [value('a', 2)], value('y', 9))).toEqual(['y=ΣS_m·2=9']);
});

test('a name in a power is filled too, in the text as in the tree', () => {
  expect(
    filled('y = a^(m/5) + b^m', [value('m', 2.27), value('a', 3), value('b', 4)], value('y', 25)),
  ).toEqual(['y=3^(2.27/5)+4^2.27=25']);
});
