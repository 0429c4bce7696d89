import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Design } from '../../src/model/design.ts';
import { eightResistors } from '../../src/model/examples/eightResistors.ts';
import { examples } from '../../src/model/examples/examples.ts';
import { usualSpreads } from '../../src/model/spreads/spreads.ts';
import { runJob } from '../../src/studies/job.ts';
import type { ToleranceQuestion } from '../../src/studies/tolerance/question.ts';
import { toleranceJob } from '../../src/studies/tolerance/toleranceJob.ts';
import { tryDesign } from '../../src/studies/vary.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';

type Row = Design['spreads'][number];
const calm: Row[] = usualSpreads.map(({ path }) => ({ path, kind: 'none', relative: false, size: 0 }));
const question: ToleranceQuestion = { design: eightResistors, draws: 600, seed: 1, boxes: 1, methods: true };
const run = (change: Partial<ToleranceQuestion>) => runJob(toleranceJob, { ...question, ...change });

/** The usual spreads, each so many times as wide. */
function widened(design: Design, times: number): Design {
  const spreads = usualSpreads
    .filter(({ kind }) => kind !== 'tolerance')
    .map(({ path, kind, relative, size }) => ({ path, kind, relative, size: size * times }));
  return { ...design, spreads };
}

describe('parts that vary', () => {
  test.each(examples)('$id: without spreads every box is the one as drawn', ({ design }) => {
    const nominal = tryDesign(design);
    const {
      figures,
      holds,
      nominal: said,
    } = run({ design: { ...design, spreads: calm }, draws: 100, methods: false });
    if (!nominal.ok) throw new Error('examples have an answer');
    expect(holds.share).toBe(nominal.state === 'fails' ? 0 : 1);
    for (const { key, p5, p95 } of figures) {
      // Neighbours settle to a millionth of a kelvin.
      const allowed = 1e-5 * (1 + Math.abs(nominal.outputs[key]));
      expect(Math.abs(p5 - (said?.outputs[key] ?? 0)), key).toBeLessThan(allowed);
      expect(Math.abs(p95 - (said?.outputs[key] ?? 0)), key).toBeLessThan(allowed);
    }
  });

  test('come out the same for one seed, whoever draws which of them when', () => {
    const count = toleranceJob.count(question);
    const backwards = [...Array(count).keys()]
      .reverse()
      .map((i) => [i, toleranceJob.piece({ ...question }, i)] as const);
    const pieces = backwards.sort(([a], [b]) => a - b).map(([, piece]) => piece);
    expect(toleranceJob.gather(question, pieces)).toEqual(run({}));
    expect(run({ seed: 2 }).figures).not.toEqual(run({}).figures);
  });

  test('scatter no less where spreads are wider', () => {
    const [narrow, usual, wide] = [0.5, 1, 1.5].map((times) => {
      const { figures } = run({ design: widened(eightResistors, times) });
      return figures.map(({ p5, p95 }) => p95 - p5);
    });
    usual?.forEach((width, i) => {
      expect(width).toBeGreaterThanOrEqual((narrow?.[i] ?? 0) * 0.999);
      expect(wide?.[i]).toBeGreaterThanOrEqual(width * 0.999);
    });
  });

  test('hold as often as the interval of a smaller sample says, 19 of 20 times', () => {
    const { share } = run({ draws: 8000, seed: 99 }).holds;
    const seeds = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
    const within = seeds.filter((seed) => {
      const { low, high } = run({ draws: 256, seed }).holds;
      return low <= share && share <= high;
    });
    expect(within.length).toBeGreaterThanOrEqual(10);
  });

  test('of any design have an answer or count as not holding, and every number is finite', () => {
    fc.assert(
      fc.property(
        arbitraryDesign('usual', { mostPositions: 4 }),
        fc.integer({ min: 1, max: 3 }),
        (design, boxes) => {
          const result = run({ design, draws: 100, boxes });
          const numbers = JSON.stringify(result, (_, value) =>
            typeof value === 'number' && !Number.isFinite(value) ? 'lost' : value,
          );
          expect(numbers).not.toContain('lost');
          expect(result.holds.share).toBeLessThanOrEqual(1 - result.noAnswer + 1e-12);
        },
      ),
      { numRuns: 25, seed: 20261128 },
    );
  });
});
