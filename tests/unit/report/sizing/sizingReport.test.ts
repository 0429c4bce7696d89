import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { onePair } from '../../../../src/model/examples/onePair.ts';
import { sizingReport } from '../../../../src/report/sizing/sizingReport.ts';
import { rowAt } from '../../../../src/report/sizing/sizingRows.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { sizingJob } from '../../../../src/studies/sizing/sizing.ts';
import { standingOf } from '../../../../src/studies/sizing/standing.ts';
import type { Target } from '../../../../src/studies/sizing/target.ts';
import { withValues } from '../../../../src/studies/vary.ts';

const plain = (text: string) => text.replaceAll('\u202f', ' ');
const tenKelvin: Target = { ask: 'everyLimit', margin_K: 10 };
const report = (design: Design, target: Target, system: 'metric' | 'inch' = 'metric') =>
  sizingReport({ design, target }, runJob(sizingJob, { design, target }), system);

describe('sizes in words', () => {
  const told = report(eightResistors, tenKelvin);

  test('begin with what the box would bear', () => {
    expect(plain(told.sentence)).toBe(
      'Kept 10 K below every temperature limit, each by itself: the box would carry 32 W; its fan could run down to 11.7 V, 31 dB(A); the clearance all round could grow to 1.17 mm; the room could reach 40.2 °C.',
    );
  });

  test('say of every measure what it is, where it ends, how much room that is, and what ends it', () => {
    expect(rowAt(told.rows, 'sideClearance')).toMatchObject({
      lead: 'at most',
      stop: 'Derating line, resistor 4',
    });
    const [table] = told.tables;
    const row = table?.rows.find(([label]) => label === 'Widest side clearance')?.map(plain);
    expect(row).toEqual([
      'Widest side clearance',
      '0.8 mm',
      'at most',
      '1.22 mm',
      '+0.42 mm',
      'Derating line, resistor 4',
      '94 °C',
      '32 dB(A)',
    ]);
    expect(table?.rows).toHaveLength(told.rows.length);
  });

  test('put into the design as told, still meet the target', () => {
    for (const system of ['metric', 'inch'] as const) {
      for (const { key, state, values } of report(eightResistors, tenKelvin, system).rows) {
        if (state === 'out') continue;
        const left = standingOf(withValues(eightResistors, values), tenKelvin).left_K;
        expect(left, key).toBeGreaterThanOrEqual(0);
      }
    }
  });

  test('tell a load in watts, in the volts or amps that make them too', () => {
    const { rows } = report(onePair, tenKelvin);
    const load = rowAt(rows, 'load');
    expect(load?.values).toHaveProperty('load.supply_A');
    expect(load?.amounts.value.unit).toBe('W');
  });

  test('say of a free measure that all of its range does', () => {
    const { rows, sentence } = report(onePair, tenKelvin);
    expect(rowAt(rows, 'fanSupply')).toMatchObject({ lead: 'anything down to', state: 'free' });
    expect(plain(sentence)).toContain('could run down to 5 V, where it just starts, 9 dB(A)');
  });
});

describe('a target out of reach', () => {
  test('is answered with what stands in the way, and what by itself would do', () => {
    const { sentence, rows } = report(eightResistors, { ask: 'spare', spareFactor: 1.25 });
    expect(plain(sentence)).toBe(
      'As it is, the box lacks the 1.25 × spare on every temperature rise: the derating line (resistor 4) lets the load grow to 1.10 × only. By itself a load of 28.1 W, a bond line of 0.0487 mm or a room of 24.3 °C would do.',
    );
    expect(rowAt(rows, 'clearance')).toMatchObject({ state: 'out', lead: 'best at' });
    expect(plain(rowAt(rows, 'clearance')?.stop ?? '')).toContain('lets the load grow to 1.10 × only');
  });

  test('by kelvin says how many are missing', () => {
    const { rows } = report(eightResistors, { ask: 'everyLimit', margin_K: 30 });
    expect(plain(rowAt(rows, 'slot')?.stop ?? '')).toMatch(
      /^The derating line \(resistor 4\) is \d+\.\d K short$/,
    );
  });

  test('for a maker’s own figure tells that figure', () => {
    const hard = {
      ...eightResistors,
      positions: eightResistors.positions.map((position) => ({ ...position, power_W: 6 })),
    };
    const { sentence } = report(hard, { ask: 'film', margin_K: 0 });
    expect(plain(sentence)).toContain('carries 6 W and is rated 5 W');
  });

  test('for want of an answer says why', () => {
    const stranded: Design = {
      ...onePair,
      sink: { ...onePair.sink, first: false },
      secondFace: { ...onePair.secondFace, way: 'free' },
    };
    const { sentence, rows } = report(stranded, tenKelvin);
    expect(sentence).toContain('resistor 1 carries watts but has no way to a sink');
    expect(sentence).toContain('No measure alone brings it there');
    expect(rows.every(({ film }) => film === '–')).toBe(true);
  });
});
