import { describe, expect, test } from 'vitest';
import { fansStopped } from '../../../src/core/system/input.ts';
import { solveSystem } from '../../../src/core/system/solveSystem.ts';
import { trustOf } from '../../../src/core/system/trust.ts';
import { anotherFan } from '../../../src/model/defaults.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { toCore } from '../../../src/model/toCore.ts';
import { buildReport } from '../../../src/report/buildReport.ts';
import { reportTables } from '../../../src/report/tables.ts';
import type { Report } from '../../../src/report/types.ts';
import { exampleIds, sampleExample, sampleOf, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

/** Every string and number anywhere in a value. */
function leaves(value: unknown): (string | number)[] {
  if (typeof value === 'string' || typeof value === 'number') return [value];
  if (Array.isArray(value)) return value.flatMap(leaves);
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(leaves) : [];
}

function expectClean(report: Report) {
  for (const leaf of leaves(report)) {
    if (typeof leaf === 'number') expect(Number.isFinite(leaf)).toBe(true);
    else expect(leaf).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  }
}

describe.each(exampleIds)('the report of the example %s', (id) => {
  test.each(['metric', 'inch'] as const)('holds only finite numbers and whole words, in %s', (system) => {
    expectClean(sampleExample(id, system).report);
  });

  test('says the verdict in a sentence that begins with its word', () => {
    const { verdict } = sampleExample(id).report;
    expect(verdict.sentence.toLowerCase()).toMatch(new RegExp(`^${verdict.word}: .*\\d.*\\.$`));
  });

  test('keeps the limits in the order of the outcome', () => {
    const { outcome, report } = sampleExample(id);
    if (!outcome.ok) throw new Error('the example has no answer');
    expect(report.limits.map((row) => row.key)).toEqual(outcome.limits.map((limit) => limit.key));
    expect(report.verdict.state).toBe(outcome.verdict.state);
  });

  test('numbers every source once, and every method and limit points at its own', () => {
    const { methods, limits, sources } = sampleExample(id).report;
    expect(sources.map((row) => row.number)).toEqual(sources.map((_, i) => i + 1));
    expect(new Set(sources.map((row) => row.key)).size).toBe(sources.length);
    for (const method of methods)
      expect(method.source.startsWith(sources[method.footnote - 1]?.cite ?? 'none')).toBe(true);
    for (const limit of limits) expect(limit.source).toBe(sources[limit.footnote - 1]?.cite);
    const cited = new Set([...methods, ...limits].map((row) => row.footnote));
    expect(cited.size).toBe(sources.length);
  });

  test('lists exactly the methods that the answers with and without fans used', () => {
    const { design, report } = sampleExample(id);
    const input = toCore(design);
    const used = [...trustOf(input).used, ...trustOf(input, fansStopped).used];
    const said = report.methods.map((method) => method.id);
    expect([...said].sort()).toEqual([...new Set(used)].sort());
    const stoppedAlone = said.filter((method) => !trustOf(input).used.includes(method));
    expect(stoppedAlone).toContain('standingFan');
  });

  test('carries every note of the outcome, alike ones once', () => {
    const { design, report } = sampleExample(id);
    const { notes } = trustOf(toCore(design));
    expect(new Set(report.notes.map((note) => note.code))).toEqual(new Set(notes.map((note) => note.code)));
  });

  test('gives every table as many cells in a row as it has columns, under distinct heads', () => {
    for (const { columns, rows } of reportTables(sampleExample(id).report)) {
      const heads = columns.map((column) => column.head);
      expect(new Set(heads).size).toBe(heads.length);
      for (const row of rows) expect(row).toHaveLength(heads.length);
    }
  });

  test('draws both curves and marks the point that the answer uses on the fan’s curve', () => {
    const chart = sampleExample(id).report.air?.chart;
    const used = chart?.marks.find((mark) => mark.used);
    if (!chart || !used) throw new Error('no chart');
    const after = chart.fan.findIndex((point) => point.flow >= used.flow);
    const [a, b] = [chart.fan[after - 1], chart.fan[after]];
    expect(used.dp).toBeLessThanOrEqual((a?.dp ?? 0) + 1e-9);
    expect(used.dp).toBeGreaterThanOrEqual((b?.dp ?? 0) - 1e-9);
  });

  test('lets the steps of the ladder meet end to end, from the room to the hottest film', () => {
    const { report, outcome } = sampleExample(id);
    const rungs = report.heat?.ladder.rungs ?? [];
    rungs.slice(1).forEach((rung, i) => {
      expect(rung.from).toBeCloseTo(rungs[i]?.to ?? Number.NaN, 9);
    });
    const hottest = outcome.ok ? Math.max(...outcome.heat.positions.map((p) => p.film_K)) : 0;
    expect(rungs.at(-1)?.to).toBeCloseTo(hottest - 273.15, 9);
  });
});

describe('notes', () => {
  const { design } = sampleExample('eightResistors');

  test('of the box without fans stand with the stop, those of both with the running box alone', () => {
    const { notes, fanStop } = sampleOf({
      ...design,
      box: { ...design.box, tilt_rad: Math.PI / 2 },
      baffle: { ...design.baffle, sideClearance_m: 0.0002 },
    }).report;
    expect(notes.map(({ code }) => code)).toContain('tightGap');
    expect(fanStop.notes.map(({ code }) => code)).toContain('lyingFins');
    const said = [...notes, ...fanStop.notes].map(({ text }) => text);
    expect(new Set(said).size).toBe(said.length);
  });

  test.each([
    ['fanObstructed', { ...design, fan: { ...design.fan, inletSpace_m: 0.02 } }],
    ['fanBackwards', { ...design, moreFans: [{ ...anotherFan(design.fan, 0), supply_V: 0 }] }],
    ['bridgedDip', { ...exampleById('dippingCurve'), moreFans: [anotherFan(design.fan, 0)] }],
  ])('of the fans reach the reader: %s', (code, change) => {
    expect(sampleOf(change).report.notes.map((note) => note.code)).toContain(code);
  });
});

describe('units', () => {
  test('never mix: the inch report speaks of °F, cfm and inches, not of °C, m³/h or mm', () => {
    const { drawing, sources, methods, assumptions, inputs, everyInput, title, load, ...own } = sampleExample(
      'eightResistors',
      'inch',
    ).report;
    const words = leaves(own)
      .filter((leaf) => typeof leaf === 'string')
      .join(' ');
    expect(words).toMatch(/°F/);
    expect(words).toMatch(/cfm/);
    expect(words).not.toMatch(/°C|m³\/h|\d\s?mm\b|\d\s?Pa\b/);
  });
});

describe('a design without an answer', () => {
  test('is reported whole: verdict, what to change, inputs, cautions and drawing, and no figures', () => {
    const { report } = sampleWithoutAnswer();
    expect(report.verdict.state).toBe('noAnswer');
    expect(report.verdict.sentence).toMatch(/^No answer: the fan gets 3\s?V and needs 6\s?V to start\.$/);
    expect(report.verdict.reasons.length).toBeGreaterThan(0);
    expect([report.air, report.heat, report.load, report.ratings]).toEqual([null, null, null, null]);
    expect(report.inputs.length).toBeGreaterThan(0);
    expect(report.cautions.length).toBeGreaterThan(0);
    expect(report.drawing.section.shapes.length).toBeGreaterThan(0);
    expect(report.drawing.section.streams).toEqual([]);
    expectClean(report);
  });
});

describe('the invented mark', () => {
  test('stands on an example and not on a design of one’s own', () => {
    const { design, report } = sampleExample('onePair');
    expect(report.title.invented).not.toBe('');
    expect(sampleOf({ ...design, invented: false }).report.title.invented).toBe('');
  });
});

describe('the stale mark', () => {
  test('stands in the title block only while something typed is not right', () => {
    const { design } = sampleExample('onePair');
    const outcome = solveSystem(toCore(design));
    const say = (stale: boolean) => buildReport(design, outcome, { system: 'metric', stale }).title.stale;
    expect(say(true)).toContain('last answer that went together');
    expect(say(false)).toBe('');
  });
});
