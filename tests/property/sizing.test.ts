import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Design, designSchema } from '../../src/model/design.ts';
import { examples } from '../../src/model/examples/examples.ts';
import { runJob } from '../../src/studies/job.ts';
import { sizersOf } from '../../src/studies/sizing/sizers.ts';
import { type Sized, sizingJob } from '../../src/studies/sizing/sizing.ts';
import { standingOf } from '../../src/studies/sizing/standing.ts';
import type { Target } from '../../src/studies/sizing/target.ts';
import { withValues } from '../../src/studies/vary.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';

const targets: readonly Target[] = [
  { ask: 'spare', spareFactor: 1.25 },
  { ask: 'everyLimit', margin_K: 10 },
  { ask: 'film', margin_K: 20 },
];

/** The result put back as a design: nothing of it is taken from the search. */
function putBack(design: Design, { id }: Sized, value: number): Design {
  const sizer = sizersOf(design).find((each) => each.id === id);
  return sizer ? withValues(design, sizer.values(value)) : design;
}

/**
 * What is found meets the target, to 0.1 K of it where a limit stops it; or the answer jumps there, and a hair further it
 * misses. What is free or out of reach is so at its value too.
 */
function judgeSize(design: Design, target: Target, sized: Sized): void {
  const { edge, want } = sized;
  const back = putBack(design, sized, edge.value);
  expect(designSchema.safeParse(back).success, `${sized.id} ${edge.value}`).toBe(true);
  const left_K = standingOf(back, target).left_K ?? Number.NEGATIVE_INFINITY;
  if (edge.state === 'out') {
    expect(left_K).toBeLessThan(0.1);
    return;
  }
  expect(left_K, sized.id).toBeGreaterThan(-0.1);
  if (edge.state === 'found' && left_K > 0.1) {
    const further = edge.value * (1 + (want === 'most' ? 1e-6 : -1e-6));
    expect(standingOf(putBack(design, sized, further), target).left_K ?? -1, sized.id).toBeLessThan(0);
  }
}

describe('a size put back as a design', () => {
  const [eight, pair, dozen, dip] = examples.map(({ design }) => design) as [Design, Design, Design, Design];
  const [spare, every, film] = targets as [Target, Target, Target];
  test.each([
    ['spare', eight, spare],
    ['kelvin below every limit', eight, every],
    ['kelvin below the film’s', eight, film],
    ['kelvin below every limit, one resistor', pair, every],
    ['spare, two dozen', dozen, spare],
    ['spare, a fan with a dip', dip, spare],
  ] as const)('gives the margin asked for to 0.1 K: %s', (_, design, target) => {
    for (const sized of runJob(sizingJob, { design, target }).sized) judgeSize(design, target, sized);
  });

  test('gives it in random boxes too', () => {
    fc.assert(
      fc.property(
        arbitraryDesign('usual', { mostPositions: 2 }),
        fc.constantFrom(...targets),
        (drawn, target) => {
          const design = { ...drawn, load: { ...drawn.load, duty: 1 } };
          for (const sized of runJob(sizingJob, { design, target }).sized) judgeSize(design, target, sized);
        },
      ),
      { seed: 20261125, numRuns: 8, endOnFailure: true },
    );
  }, 60_000);

  test('is a finite number or a reason, whatever stands in the fields', () => {
    fc.assert(
      fc.property(arbitraryDesign('hard', { mostPositions: 2 }), (design) => {
        const { now, sized } = runJob(sizingJob, { design, target: { ask: 'everyLimit', margin_K: 5 } });
        expect(now?.left_K === null || Number.isFinite(now?.left_K)).toBe(true);
        for (const { edge } of sized) {
          expect(Number.isFinite(edge.value)).toBe(true);
          expect(edge.here.left_K === null || Number.isFinite(edge.here.left_K)).toBe(true);
        }
      }),
      { seed: 20261125, numRuns: 5, endOnFailure: true },
    );
  });

  test('moves with what is asked: more kelvin never allow more load', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20, noNaN: true }), (margin_K) => {
        const { design } = examples[0] as (typeof examples)[number];
        const load = (asked_K: number) =>
          sizingJob.piece({ design, target: { ask: 'everyLimit', margin_K: asked_K } }, 1);
        const [less, more] = [load(margin_K), load(margin_K + 1)];
        if (!('sized' in less && 'sized' in more)) throw new Error('the load is sized first');
        expect(more.sized.edge.value).toBeLessThan(less.sized.edge.value);
      }),
      { seed: 20261125, numRuns: 4, endOnFailure: true },
    );
  });
});
