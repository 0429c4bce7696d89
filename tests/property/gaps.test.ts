import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import { toCore } from '../../src/model/toCore.ts';
import { gapReport } from '../../src/report/gaps/gapReport.ts';
import { askedGaps, firstGapForm } from '../../src/store/gapForm.ts';
import {
  gapKeys,
  gapRoom,
  gapValues,
  stepValues_m,
  usualCut_m,
  usualSteps,
} from '../../src/studies/gaps/gap.ts';
import { gapLineJob } from '../../src/studies/gaps/gapLine.ts';
import { reserveOf, stateOfReserve } from '../../src/studies/gaps/reserve.ts';
import { stateOf } from '../../src/studies/gaps/verdictChanges.ts';
import { runJob } from '../../src/studies/job.ts';
import { judgedOf } from '../../src/studies/outputs.ts';
import { tryValues } from '../../src/studies/vary.ts';
import { parseQuantityList } from '../../src/units/parseQuantityList.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';

const seed = 20261128;
const ordinary = arbitraryDesign('usual', { mostPositions: 5, mostParts: 1 });
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('in ordinary boxes', () => {
  test('a wider clearance leaves the fins no larger share of the air', () => {
    const clearance = fc.constantFrom(
      'sideClearance_m' as const,
      'endClearance_m' as const,
      'leakGap_m' as const,
    );
    fc.assert(
      fc.property(ordinary, clearance, share, share, (design, gap, a, b) => {
        const most_m = Math.min(gapRoom(design, gap).most_m, 0.01);
        const [tight, loose] = [Math.min(a, b), Math.max(a, b)].map((each) =>
          tryValues(design, gapValues(gap, each * most_m)),
        );
        if (!tight?.ok || !loose?.ok) return;
        expect(loose.outputs.finShare).toBeLessThanOrEqual(tight.outputs.finShare + 1e-6);
      }),
      { seed, numRuns: 60 },
    );
  });

  test('every range has an answer or a reason for each row, words for all, and the bench’s own present row', () => {
    fc.assert(
      fc.property(ordinary, fc.constantFrom(...gapKeys), (design, gap) => {
        const steps = usualSteps(design, gap);
        const values_m = stepValues_m({ ...steps, step_m: Math.max(steps.step_m * 4, 1e-6) });
        const question = { design, gap, values_m, cut_m: usualCut_m(design, gap) };
        const line = runJob(gapLineJob, question);
        const report = gapReport(question, line, 'metric');
        const bench = judgedOf(solveSystem(toCore(design)));
        if (line.present?.ok) expect(line.present).toEqual({ ok: true, ...bench });
        const bare = { ...design, baffle: { ...design.baffle, fitted: false } };
        expect(stateOf(line.none)).toBe(stateOf(tryValues(bare, {})));
        expect(report.rows.filter(({ isPresent }) => isPresent)).toHaveLength(1);
        expect(report.rows.every(({ first }) => first !== '')).toBe(true);
        expect(JSON.stringify(report)).not.toMatch(/NaN|Infinity|undefined/);
        expect(report.sentence).toMatch(/\.$/);
      }),
      { seed, numRuns: 15 },
    );
  });

  test('the reserve of a verdict has the sign of the verdict', () => {
    fc.assert(
      fc.property(ordinary, (design) => {
        const outcome = solveSystem(toCore(design));
        if (!outcome.ok) return;
        const { spareFactor } = design.limits;
        const reserve = reserveOf(outcome, {
          spareFactor,
          glassTransition_K: design.bond.glassTransition_K,
        });
        expect(stateOfReserve(reserve)).toBe(outcome.verdict.state);
      }),
      { seed, numRuns: 80 },
    );
  });
});

test('the range to begin with reads for any box at all, in either system', () => {
  fc.assert(
    fc.property(arbitraryDesign('hard', { mostPositions: 3 }), fc.constantFrom(...gapKeys), (design, gap) => {
      for (const system of ['metric', 'inch'] as const) {
        const { values, line } = askedGaps({ ...firstGapForm, gap }, design, system);
        expect(values.problem).toBe(null);
        expect(line?.values_m.length).toBeLessThan(20);
      }
    }),
    { seed, numRuns: 100 },
  );
});

test('a list of lengths reads as it was written', () => {
  const length = fc.record({
    amount: fc.integer({ min: 0, max: 99_999 }),
    unit: fc.constantFrom('mm', 'in', 'cm', 'mil'),
  });
  const size = { mm: 1e-3, in: 0.0254, cm: 0.01, mil: 25.4e-6 };
  fc.assert(
    fc.property(
      fc.array(length, { minLength: 1, maxLength: 12 }),
      fc.constantFrom(', ', '; ', '\n'),
      (list, mark) => {
        const text = list.map(({ amount, unit }) => `${amount / 1000} ${unit}`).join(mark);
        const read = parseQuantityList(text, 'length', 'mm', 20);
        expect(read.ok && read.values.map(({ unit }) => unit)).toEqual(list.map(({ unit }) => unit));
        list.forEach(({ amount, unit }, i) => {
          const value = read.ok ? (read.values[i]?.value ?? -1) : -1;
          expect(value).toBeCloseTo((amount / 1000) * size[unit], 12);
        });
      },
    ),
    { seed, numRuns: 300 },
  );
});
