import { describe, expect, test } from 'vitest';
import { flatten, isAllowed, kindTotals, totalsOf } from '../../../../src/report/evidence/totals.ts';
import { sampleCheck, sampleGroup } from '../../../helpers/sampleChecks.ts';

const checks = flatten([
  sampleGroup({
    checks: [sampleCheck(), sampleCheck({ deviation: 0.03 }), sampleCheck({ deviation: -0.2 })],
  }),
  sampleGroup({ source: 'Another', kind: 'measured', checks: [sampleCheck({ printed: '0', deviation: 9 })] }),
]);

describe('totals', () => {
  test('count checks, sources, and how many are within 1 and 5 %', () => {
    expect(totalsOf(checks)).toMatchObject({ count: 4, sources: 2, within1: 1, within5: 2 });
  });

  test('do not take a deviation from nil for the farthest', () => {
    expect(totalsOf(checks).worst?.deviation).toBe(-0.2);
    expect(totalsOf([]).worst).toBe(null);
  });

  test('have every kind, also one without a check', () => {
    expect(kindTotals(checks).map(({ kind, count }) => [kind, count])).toEqual([
      ['measured', 1],
      ['handbook', 0],
      ['worked example', 3],
      ['computed elsewhere', 0],
      ['worked again', 0],
      ['from memory', 0],
    ]);
  });
});

test('a check is judged by its allowance as written', () => {
  expect(isAllowed(sampleCheck())).toBe(true);
  expect(isAllowed(sampleCheck({ deviation: 0.0051 }))).toBe(false);
  expect(isAllowed(sampleCheck({ deviation: -0.01, allowed: [0, 0.06] }))).toBe(false);
});
