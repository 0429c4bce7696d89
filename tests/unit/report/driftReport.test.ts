import { describe, expect, test } from 'vitest';
import type { Drift } from '../../../src/core/system/drift.ts';
import { driftOf } from '../../../src/core/system/drift.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { driftReport } from '../../../src/report/driftReport.ts';
import { exampleIds, sampleExample } from '../../helpers/sampleReport.ts';

const example = exampleById('eightResistors');
const design = {
  ...example,
  positions: example.positions.slice(0, 3).map((position, r) => ({ ...position, on: r !== 1 })),
  limits: { ...example.limits, settled: 25e-6 },
};
const warm = driftOf(toCore(design));
const last = warm?.warmUp.points.at(-1);
if (!warm || !last) throw new Error('the example has no answer');

const drift: Drift = {
  each: [412e-6, -1900e-6, -650.4e-6],
  whole: null,
  eachSettled_s: [140, 9000, 31],
  wholeSettled_s: null,
  warmUp: { ...warm.warmUp, points: [{ ...last, films_K: [363.15, 323.15, 373.15] }] },
};
const plain = (text: string) => text.replaceAll('\u202f', ' ');
const textsOf = ({ amounts: _, ...texts }: object & { readonly amounts?: unknown }) =>
  plain(Object.values(texts).join('|'));
const reportOf = (change: Partial<Drift> = {}) => driftReport(design, { ...drift, ...change }, 'metric');

describe('what self-heating does to the resistances', () => {
  test('of single resistors: the one that moves most, and the one that settles last, of those that are on', () => {
    expect(plain(reportOf()?.sentence ?? '')).toBe(
      'Self-heating changes resistor 3 most, by −650 ppm; from a cold start all stay within 25 ppm of their final values after 2 min 20 s.',
    );
  });

  test('of a string or a set: the whole, with a row of its own', () => {
    const said = reportOf({ whole: 87e-6, wholeSettled_s: 45 });
    expect(plain(said?.sentence ?? '')).toBe(
      'Self-heating changes the resistance of the whole by +87 ppm; from a cold start it stays within 25 ppm of its final value after 45 s.',
    );
    expect(said?.rows).toHaveLength(4);
    expect(textsOf(said?.rows[3] ?? {})).toBe('All together||+87 ppm|45 s');
  });

  test('has a row for every resistor, with its film, its sign and its time', () => {
    expect(reportOf()?.rows.map(textsOf)).toEqual([
      'Resistor 1|90 °C|+412 ppm|2 min 20 s',
      'Resistor 2|50 °C|−1900 ppm|2 h 30 min',
      'Resistor 3|100 °C|−650 ppm|31 s',
    ]);
  });

  test('shows tenths of what is small, and no sign of nothing', () => {
    const rows = reportOf({ each: [4.24e-6, 0, -0.31e-6], eachSettled_s: [0, 0, 0] })?.rows ?? [];
    expect(rows.map((row) => plain(row.drift))).toEqual(['+4.2 ppm', '0 ppm', '−0.3 ppm']);
    expect(rows[0]?.settled).toBe('no time');
  });

  test('says how long the box takes to warm up, when it is there to the kelvin', () => {
    const at = (time_s: number, film_K: number) => ({ ...last, time_s, film_K });
    const points = [at(0, 300), at(100, 349.5), at(200, 350)];
    const said = reportOf({ warmUp: { ...warm.warmUp, points } });
    expect(plain(said?.warmUp ?? '')).toMatch(/within 1 K of its 77 °C after 9\d s\.$/);
  });

  test('says how close counts as settled, as it was asked for', () => {
    const within = (settled: number) =>
      plain(driftReport({ ...design, limits: { ...design.limits, settled } }, drift, 'metric')?.within ?? '');
    expect(within(1e-5)).toBe('10 ppm');
    expect(within(2.5e-6)).toBe('2.5 ppm');
  });

  test('is not told without an answer, or with every resistor off', () => {
    expect(driftReport(design, null, 'metric')).toBeNull();
    const off = { ...design, positions: design.positions.map((position) => ({ ...position, on: false })) };
    expect(driftReport(off, drift, 'metric')).toBeNull();
  });
});

test.each(exampleIds)('in %s the films of the drift are those of the settled box', (id) => {
  const { report } = sampleExample(id);
  const films = report.drift?.rows.flatMap(({ film }) => (film === '' ? [] : [film])) ?? [];
  expect(films).toHaveLength(report.heat?.positions.length ?? 0);
  const degrees = (text: string) => Number.parseFloat(text);
  report.heat?.positions.forEach(({ film }, r) => {
    // The warm-up stops when a plate moves by less than 0.02 K in its own time; printed to whole degrees.
    expect(Math.abs(degrees(films[r] ?? '') - degrees(film))).toBeLessThanOrEqual(1);
  });
});
