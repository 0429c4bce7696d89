import { describe, expect, test } from 'vitest';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { onePair } from '../../../../src/model/examples/onePair.ts';
import { finSizingReport } from '../../../../src/report/sizing/finSizingReport.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { type FinRules, usualRules } from '../../../../src/studies/sizing/finRules.ts';
import { finSizingJob } from '../../../../src/studies/sizing/finSizing.ts';
import type { Target } from '../../../../src/studies/sizing/target.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');
const target: Target = { ask: 'everyLimit', margin_K: 10 };
const usual = { ...usualRules(onePair), thicknesses_m: [0.0008, 0.0015] };
const report = (rules: Partial<FinRules> = {}, design = onePair) => {
  const question = { design, target, rules: { ...usual, ...rules } };
  return finSizingReport(question, runJob(finSizingJob, question), 'metric');
};

describe('fins in words', () => {
  const told = report();

  test('begin with the best set, how it compares, whether it does, and what quiet costs', () => {
    expect(plain(told.sentence)).toBe(
      'Best of 9 sets that these rules allow: 6 fins of 0.8 mm, 12 mm high, with slots of 3.04 mm; hottest film 45.5 °C at 12 V, as with the present 7 fins, which these rules do not allow. The target is met. Between the loudest and the quietest, 28 dB(A) and 9 dB(A), lie 2.7 K.',
    );
  });

  test('draw what less sound costs beside the present fins, and what less pressure costs', () => {
    const { chart, rows, table } = told.overSound;
    expect(chart?.lines.map(({ key }) => key)).toEqual(['front', 'now']);
    expect(chart?.lines[0]?.points).toHaveLength(rows.length);
    expect(table.rows).toHaveLength(rows.length);
    expect(told.overPressure.chart?.lines.map(({ key }) => key)).toEqual(['front']);
    expect(chart?.spoken).toMatch(/^Coolest film at every sound level: from/);
  });

  test('have a row for every count, coolest first, each with what it puts into the design', () => {
    expect(told.byCount.map(({ count }) => count)).toEqual(['6', '5', '4', '3', '2']);
    expect(told.byCount[0]?.values).toEqual({
      'sink.finCount': 6,
      'sink.finThickness_m': 0.0008,
      'sink.finHeight_m': 0.012,
    });
    expect(told.byCount[0]?.target).toBe('Met');
    expect(told.overSound.rows[0]?.values).toHaveProperty(['fan.supply_V']);
    expect(told.tables.map(({ id }) => id)).toEqual(['fin-sets', 'fins-over-sound', 'fins-over-pressure']);
  });

  test('of a target out of reach say what stands in the way', () => {
    const { sentence } = report({}, eightResistors);
    expect(plain(sentence)).toMatch(
      /The target stays out of reach: the derating line \(resistor 4\) is .* short/,
    );
  });
});

test.each([
  [{ cutters_m: [0.019] }, 'an end mill of 19 mm leaves no two fins on a sink 20 mm wide'],
  [{ depthRatio: 0.5 }, 'the deepest slot is 1.5 mm, less than the 4 mm asked for'],
  [{ leastThickness_m: 0.002 }, 'every thickness at hand is below 2 mm'],
  [
    { leastHeight_m: 0.018, mostHeight_m: 0.02 },
    'the box has room for fins 16.4 mm high, less than the 18 mm asked for',
  ],
] as const)('rules that leave nothing: %o', (rules, reason) => {
  expect(plain(report(rules).sentence)).toBe(`No fins can be cut by these rules: ${reason}.`);
});

test('bounds that leave nothing are answered with the quietest and the least pressure', () => {
  expect(plain(report({ mostSound_dBA: 1 }).sentence)).toMatch(
    /^Nothing stays within these bounds: the quietest is 9 dB\(A\), and the least that is asked of the fan \d/,
  );
});
