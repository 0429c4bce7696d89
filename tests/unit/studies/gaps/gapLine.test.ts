import { describe, expect, test } from 'vitest';
import { ordinaryRun } from '../../../../src/core/system/input.ts';
import { solveSystem } from '../../../../src/core/system/solveSystem.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { toCore } from '../../../../src/model/toCore.ts';
import { gapValues } from '../../../../src/studies/gaps/gap.ts';
import { type GapPiece, gapLineJob } from '../../../../src/studies/gaps/gapLine.ts';
import { judgedOf } from '../../../../src/studies/outputs.ts';
import { tryValues } from '../../../../src/studies/vary.ts';
import { eightWithoutBaffle, sampleGap, sampleGapQuestion } from '../../../helpers/sampleGaps.ts';

const design = exampleById('eightResistors');
const { question, line } = sampleGap('sideClearance_m', [0, 1, 2, 12]);

describe('one gap', () => {
  test('has a row for every value asked for and for what the design has now', () => {
    const rows = line.points.filter(({ isRow }) => isRow).map(({ at_m }) => at_m);
    expect(rows).toEqual([0, 0.0008, 0.001, 0.002, 0.012]);
  });

  test('takes a value that the design has already once', () => {
    const rows = sampleGap('sideClearance_m', [0.8]).line.points.map(({ at_m }) => at_m);
    expect(rows).toEqual([0.0008]);
  });

  test('says of the present value what the bench says', () => {
    const bench = judgedOf(solveSystem(toCore(design)));
    const here = line.points.find(({ at_m }) => at_m === 0.0008)?.trial;
    expect(here).toEqual({ ok: true, ...bench });
    expect(line.present).toEqual(here);
  });

  test('knows the design without its baffle', () => {
    const bench = judgedOf(solveSystem(toCore(eightWithoutBaffle())));
    expect(line.none).toEqual({ ok: true, ...bench });
  });

  test('has between its rows points that only draw the curve', () => {
    expect(line.points.length).toBeGreaterThan(35);
    const xs = line.points.map(({ at_m }) => at_m);
    expect([...xs].sort((a, b) => a - b)).toEqual(xs);
    expect(new Set(xs).size).toBe(xs.length);
  });

  test('says why a value cannot be built', () => {
    expect(line.points.at(-1)?.trial).toMatchObject({
      ok: false,
      why: 'clash',
      problem: { code: 'sideClearanceTooWide' },
    });
    expect(line.points.at(-1)?.band_K).toBe(null);
  });

  test('knows its coolest value', () => {
    const films = line.points.flatMap(({ trial }) => (trial.ok ? [trial.outputs.film_K] : []));
    expect(line.coolest?.film_K).toBe(Math.min(...films));
  });
});

describe('the band of a cut that misses', () => {
  test('spans the film at the value and at both ends of the miss', () => {
    const film = (mm: number) => {
      const trial = tryValues(design, gapValues('sideClearance_m', mm / 1000));
      return trial.ok ? trial.outputs.film_K : Number.NaN;
    };
    const band = line.points.find(({ at_m }) => at_m === 0.001)?.band_K;
    const films = [film(0.8), film(1), film(1.2)];
    expect(band?.[0]).toBeCloseTo(Math.min(...films), 6);
    expect(band?.[1]).toBeCloseTo(Math.max(...films), 6);
  });

  test('stays inside what can be built', () => {
    const atNothing = line.points[0];
    const film = tryValues(design, gapValues('sideClearance_m', 0.0002));
    expect(film.ok && atNothing?.trial.ok).toBe(true);
    if (!film.ok || !atNothing?.trial.ok) return;
    expect(atNothing.band_K?.[0]).toBeCloseTo(film.outputs.film_K, 6);
    expect(atNothing.band_K?.[1]).toBeCloseTo(atNothing.trial.outputs.film_K, 6);
  });

  test('is a line for a cut that never misses', () => {
    const exact = { ...question, cut_m: 0 };
    const point = (gapLineJob.piece(exact, 1) as Extract<GapPiece, { points: unknown }>).points[0];
    expect(point?.band_K?.[0]).toBe(point?.band_K?.[1]);
  });
});

describe('the slope at the present value', () => {
  test('is that of the film over a tenth of a millimetre', () => {
    const [low, high] = [0.75, 0.85].map((mm) => tryValues(design, gapValues('sideClearance_m', mm / 1000)));
    if (!low?.ok || !high?.ok) throw new Error('no answer');
    expect((line.slope_KPerM ?? 0) * 1e-4).toBeCloseTo(high.outputs.film_K - low.outputs.film_K, 6);
  });

  test('is one-sided where the gap is shut already', () => {
    const shut = { ...design, baffle: { ...design.baffle, leakGap_m: 0 } };
    expect(sampleGap('leakGap_m', [0.1], shut).line.slope_KPerM).toBeGreaterThan(0);
  });

  test('is none without a baffle', () => {
    const bare = sampleGap('sideClearance_m', [1], eightWithoutBaffle()).line;
    expect(bare.slope_KPerM).toBe(null);
    expect(bare.present).toBe(null);
    expect(bare.none.ok).toBe(true);
    expect(bare.points.filter(({ isRow }) => isRow)).toHaveLength(1);
  });
});

describe('where the verdict changes', () => {
  test('is found to a hundredth of a millimetre, beyond the values asked for too', () => {
    const [change] = sampleGap('sideClearance_m', [0, 4]).line.changes;
    if (!change) throw new Error('no change');
    expect(change).toMatchObject({ from: 'little', to: 'fails', limit: 'derating' });
    expect(change.before_m).toBeGreaterThan(0.004);
    expect(change.after_m - change.before_m).toBeLessThanOrEqual(1e-5);
    const state = (at_m: number) => {
      const trial = tryValues(design, gapValues('sideClearance_m', at_m));
      return trial.ok ? trial.state : trial.why;
    };
    expect(state(change.before_m)).toBe('little');
    expect(state(change.after_m)).toBe('fails');
  });

  test('is looked for below the values as well', () => {
    const { changes, looked_m } = sampleGap('slotWidth_m', [5, 10]).line;
    expect(looked_m[0]).toBeLessThan(0.0031);
    expect(changes[0]).toMatchObject({ from: 'fails', to: 'little' });
    expect(changes[0]?.before_m).toBeCloseTo(0.00315, 4);
  });

  test('counts the pulses of a load that comes and goes', () => {
    const pulsed = { ...design, load: { ...design.load, duty: 0.3, period_s: 30 } };
    const { points } = sampleGap('sideClearance_m', [0, 2], pulsed).line;
    const [first] = points;
    const full = judgedOf(
      solveSystem(toCore({ ...pulsed, baffle: { ...pulsed.baffle, sideClearance_m: 0 } }), ordinaryRun),
    );
    expect(first?.trial).toEqual({ ok: true, ...full });
  });
});

describe('the knee', () => {
  test('of a slot is where more of it hardly helps', () => {
    const { knee } = sampleGap('slotWidth_m', [5, 15, 25, 35, 45]).line;
    expect(knee?.kind).toBe('levelsOff');
    expect(knee?.x).toBeGreaterThan(0.009);
    expect(knee?.x).toBeLessThan(0.018);
  });

  test('is not told where the film changes by less than a kelvin', () => {
    expect(sampleGap('endClearance_m', [0, 1, 2, 3, 4]).line.knee).toBe(null);
  });
});

test('pieces give the same answer in any order, and fewer of them an estimate', () => {
  const small = sampleGapQuestion('sideClearance_m', [0, 2]);
  const pieces = Array.from({ length: gapLineJob.count(small) }, (_, i) => gapLineJob.piece(small, i));
  const again = pieces.map((_, i) => gapLineJob.piece(small, pieces.length - 1 - i)).reverse();
  expect(again).toEqual(pieces);
  const estimate = gapLineJob.gather(small, pieces.slice(0, 1));
  expect(estimate.points).toEqual([]);
  expect(estimate.coolest).toBe(null);
});
