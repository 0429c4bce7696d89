import { describe, expect, test } from 'vitest';
import { allowanceSays, citation, deviationSays } from '../../../../src/report/evidence/checkWords.ts';
import { sampleCheck } from '../../../helpers/sampleChecks.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe('how far off a check is', () => {
  test.each([
    [0, '10', 'exact'],
    [0.004, '10', '0.4 % high'],
    [-0.0421, '10', '4.2 % low'],
    [1.4427, '10', '144 % high'],
    [2e-6, '10', 'under 0.001 % high'],
    [-0.004, '0', '0.004 low'],
  ])('%d beside %s is %s', (deviation, printed, words) => {
    expect(plain(deviationSays({ deviation, printed }))).toBe(words);
  });
});

describe('how far off a check may be', () => {
  test.each([
    [sampleCheck(), '±0.5 %: its printed digits'],
    [sampleCheck({ allowed: [0, 0.06], because: 'known to be high' }), '0 % to +6 %: known to be high'],
    [sampleCheck({ allowed: [-0.19, 0.05], because: 'a band' }), '−19 % to +5 %: a band'],
    [sampleCheck({ printed: '0', allowed: [-0.01, 0.01], because: 'draws' }), '±0.01: draws'],
    [sampleCheck({ allowed: [0, 0], because: 'a count' }), 'nothing: a count'],
  ])('%#: %s', (check, words) => {
    expect(plain(allowanceSays(check))).toBe(words);
  });
});

test('a source of the bibliography is cited, another says itself', () => {
  expect(citation({ source: 'lienhard', where: 'ex. 2.8' })).toMatch(/^Lienhard & Lienhard.*; ex\. 2\.8$/);
  expect(citation({ source: 'Steam tables' })).toBe('Steam tables');
});
