import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { spreadRows } from '../../../../src/report/tolerance/spreadRows.ts';
import { toleranceReport } from '../../../../src/report/tolerance/toleranceReport.ts';
import { runJob } from '../../../../src/studies/job.ts';
import type { ToleranceQuestion } from '../../../../src/studies/tolerance/question.ts';
import { toleranceJob } from '../../../../src/studies/tolerance/toleranceJob.ts';

const question: ToleranceQuestion = {
  design: eightResistors,
  draws: 1200,
  seed: 7,
  boxes: 12,
  methods: true,
};
const result = runJob(toleranceJob, question);
const report = toleranceReport(eightResistors, result, 'metric');
const plain = (text: string) => text.replaceAll('\u202f', ' ');

describe('the report of parts that vary', () => {
  test('says first what counts: boxes, batches, what matters and what gives', () => {
    expect(plain(report.sentence)).toMatch(
      /^\d+ of 1?0*00 boxes built like this hold, [\d.]+ to [\d.]+ of 100 with 95 % confidence; all twelve of a batch hold in \d+ of 100 batches, [\d.]+ to [\d.]+ of 100\. What matters most is the conductivity of the bond, \d+ % of how the film’s margin varies; where one does not hold, the limit of the derating line is passed first( most often)?\.$/,
    );
  });

  test('has every figure as drawn and at its shares, in the reader’s unit', () => {
    const { columns, rows } = report.twins.figures;
    expect(columns.map(({ head }) => head)).toEqual(['Figure', 'As drawn', '5 %', '50 %', '95 %', 'Mean']);
    expect(rows[0]?.[0]).toBe('Hottest film');
    expect(plain(rows[0]?.[3] ?? '')).toMatch(/^9\d\.\d °C$/);
    expect(rows.map(([label]) => label)).toContain('Sound');
    const inches = toleranceReport(eightResistors, result, 'inch').twins.figures;
    expect(plain(inches.rows[0]?.[3] ?? '')).toMatch(/^2\d\d\.\d °F$/);
  });

  test('draws boxes of a hundred over the margin, with its middle and ends', () => {
    const { chart } = report;
    if (!chart) throw new Error('there are answers');
    const all = chart.bins.reduce((sum, { holding, failing }) => sum + holding + failing, 0);
    expect(all).toBeCloseTo(100, 9);
    expect(chart.marks.map(({ label }) => label)).toEqual(['5 %', '50 %', '95 %']);
    expect(plain(chart.spoken)).toMatch(
      /^How far the hottest film stays below its limit: 90 of 100 boxes between /,
    );
    expect(report.twins.histogram?.rows).toHaveLength(chart.bins.length);
  });

  test('ranks what matters and says which way', () => {
    const [first] = report.influences;
    expect(first).toMatchObject({ label: 'Conductivity of the bond', aside: 'cooler' });
    expect(report.influences.length).toBeLessThanOrEqual(8);
    expect(report.twins.influences.rows.length).toBeGreaterThan(40);
  });

  test('says so where too few batches were drawn to tell what matters', () => {
    const few = runJob(toleranceJob, { ...question, draws: 120 });
    const said = toleranceReport(eightResistors, few, 'metric');
    expect(said.influences).toEqual([]);
    expect(said.remarks.join(' ')).toContain('too few boxes, or batches');
  });

  test('lists what was drawn with its source, methods by their cards', () => {
    const rows = report.twins.spreads.rows.map((cells) => cells.map(plain));
    expect(rows).toContainEqual([
      'Side clearance',
      'even',
      '±0.2 mm',
      'each box',
      'sheared and milled in a small shop; assumption',
    ]);
    expect(rows).toContainEqual([
      'Watts of each resistor',
      'by tolerance',
      '±1 %',
      'each resistor',
      'watts go with the resistance; stated in the design',
    ]);
    expect(rows.find(([label]) => label === 'Contact resistance of the bond')?.[3]).toBe(
      'nothing while the value is 0',
    );
    const method = rows.find(([label]) => label === 'Method for heat from fins to air');
    expect(method?.[2]).toBe('σ 7 %');
    expect(method?.[4]).toContain('card “');
  });

  test('names method, seed, batches and what is left out', () => {
    const said = plain(report.remarks.join(' '));
    for (const words of [
      'Sobol',
      'seed 7',
      'Wilson',
      'Spearman',
      '100 batches of 12',
      'never less than nothing',
      'not drawn',
    ])
      expect(said, words).toContain(words);
  });

  test('has a cell under every head in every table, each of its own name', () => {
    const { tables } = report;
    expect(tables).toHaveLength(5);
    expect(new Set(tables.map(({ id }) => id)).size).toBe(tables.length);
    for (const { columns, rows } of tables)
      for (const cells of rows) expect(cells).toHaveLength(columns.length);
  });

  test('marks the reader’s own spreads and keeps the usual one beside them', () => {
    const design: Design = {
      ...eightResistors,
      spreads: [
        { path: 'baffle.sideClearance_m', kind: 'normal', relative: false, size: 1e-4 },
        { path: 'bond.glassTransition_K', kind: 'uniform', relative: false, size: 5 },
      ],
    };
    const row = (label: string) => spreadRows(design, 'metric').find((each) => each.label === label);
    expect(row('Side clearance')).toMatchObject({ source: 'your own', usual: 'usually even, ±0.2\u202fmm' });
    expect(row('Glass transition, bond')).toMatchObject({ size: '±5\u202fK', usual: 'usually none' });
  });
});
