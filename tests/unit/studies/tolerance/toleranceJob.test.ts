import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { eightResistors } from '../../../../src/model/examples/eightResistors.ts';
import { runJob } from '../../../../src/studies/job.ts';
import { drawsOf, type ToleranceQuestion } from '../../../../src/studies/tolerance/question.ts';
import { toleranceJob } from '../../../../src/studies/tolerance/toleranceJob.ts';

const question: ToleranceQuestion = { design: eightResistors, draws: 400, seed: 1, boxes: 1, methods: true };
const run = (change: Partial<ToleranceQuestion>) => runJob(toleranceJob, { ...question, ...change });
const result = run({});

describe('what if parts vary', () => {
  test('draws as many boxes as asked, whole batches of them', () => {
    expect(toleranceJob.count(question)).toBe(2);
    expect(result).toMatchObject({ draws: 400, of: 400, seed: 1, boxes: 1, together: null, noAnswer: 0 });
    expect(drawsOf({ ...question, boxes: 12 })).toBe(408);
    expect(drawsOf({ ...question, draws: 3 })).toBe(100);
    expect(drawsOf({ ...question, draws: 1e9 })).toBe(200_000);
  });

  test('finds a share within its bounds, and a limit for every box that fails', () => {
    const { holds, failing } = result;
    expect(holds.low).toBeLessThan(holds.share);
    expect(holds.high).toBeGreaterThan(holds.share);
    const failed = failing.reduce((sum, { count }) => sum + count, 0);
    expect(failed).toBe(Math.round(400 * (1 - holds.share)));
    expect(failing[0]?.limit).toBe('derating');
  });

  test('has the figures of the design as drawn within those of its boxes', () => {
    for (const { key, p5, p50, p95, nominal } of result.figures) {
      expect(p5, key).toBeLessThanOrEqual(p50);
      expect(p50, key).toBeLessThanOrEqual(p95);
      expect(nominal, key).toBeGreaterThan(p5);
      expect(nominal, key).toBeLessThan(p95);
    }
  });

  test('knows what matters most, and which way', () => {
    const [first] = result.influences;
    expect(first?.of).toEqual({ is: 'input', path: 'bond.sheetK_WPerMK' });
    expect(first?.onMargin).toBeGreaterThan(0.4);
    expect(first?.way).toBeGreaterThan(0.5);
    const thicker = result.influences.find(({ of }) => of.is === 'input' && of.path === 'bond.filament_m');
    expect(thicker?.way).toBeLessThan(-0.2);
    const sum = result.influences.reduce((all, { onMargin }) => all + onMargin, 0);
    expect(sum).toBeGreaterThan(0.7);
    expect(sum).toBeLessThan(1.3);
  });

  test('gives a running estimate of the first boxes, without what matters', () => {
    const estimate = toleranceJob.gather(question, [toleranceJob.piece(question, 0)]);
    expect(estimate).toMatchObject({ draws: 200, of: 400, influences: [] });
    expect(estimate.figures[0]?.p50).toBeCloseTo(result.figures[0]?.p50 ?? 0, -0.5);
  });

  test('asks of batches how often all hold: less often than one, more often than if they had nothing in common', () => {
    const { holds, together } = run({ boxes: 4, draws: 800 });
    expect(together).toMatchObject({ boxes: 4, batches: 200 });
    expect(together?.share).toBeLessThan(holds.share);
    expect(together?.share).toBeGreaterThan(holds.share ** 4 - 0.02);
  });

  test('counts boxes without an answer as not holding', () => {
    const { fan } = eightResistors;
    const slow: Design = { ...eightResistors, fan: { ...fan, supply_V: 6.1, start_V: 6 } };
    const { noAnswer, holds, figures } = run({ design: slow, draws: 200 });
    expect(noAnswer).toBeGreaterThan(0.2);
    expect(holds.share).toBeLessThanOrEqual(1 - noAnswer);
    for (const { p5 } of figures) expect(Number.isFinite(p5)).toBe(true);
  });

  test('has nothing but zeros to say of a box that never has an answer', () => {
    const { fan } = eightResistors;
    const dead: Design = { ...eightResistors, fan: { ...fan, supply_V: 2, start_V: 6 } };
    expect(run({ design: dead, draws: 100 })).toMatchObject({
      noAnswer: 1,
      holds: { share: 0 },
      figures: [],
      margin: null,
      nominal: null,
    });
  });

  test('holds films at the end of a pulse against their limit', () => {
    const { load } = eightResistors;
    const pulsed: Design = { ...eightResistors, load: { ...load, duty: 0.5, period_s: 4 } };
    const steady = run({ design: { ...pulsed, load: { ...pulsed.load, period_s: 1e-4 } }, draws: 100 });
    const pulsing = run({ design: pulsed, draws: 100 });
    expect(pulsing.figures[0]?.p50).toBeGreaterThan((steady.figures[0]?.p50 ?? 0) + 1);
  });
});
