import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDesign } from '../../src/model/check.ts';
import type { Design } from '../../src/model/design.ts';
import { fieldAt } from '../../src/model/fields.ts';
import { changesReport } from '../../src/report/changes/changesReport.ts';
import { compareReport } from '../../src/report/compare/compareReport.ts';
import { placed } from '../../src/store/edits.ts';
import { changesJob } from '../../src/studies/changes/changes.ts';
import { gainOf, isLast } from '../../src/studies/changes/tried.ts';
import { weigh } from '../../src/studies/changes/weigh.ts';
import { compareJob } from '../../src/studies/compare/compare.ts';
import { differencesOf } from '../../src/studies/compare/differences.ts';
import { runJob } from '../../src/studies/job.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';

const few = { mostPositions: 5, mostParts: 2 };

/** Pulses cost more than all the rest, and are followed elsewhere. */
const steady = (design: Design): Design => ({ ...design, load: { ...design.load, duty: 1 } });

/** All texts and numbers of a report; JSON alone would pass over a number that is none. */
const told = (report: unknown) =>
  JSON.stringify(report, (_, value) =>
    typeof value === 'number' && !Number.isFinite(value) ? 'NaN' : value,
  );

/** What the bench has after the change was put into its fields. */
function onBench(design: Design, values: Parameters<typeof placed>[1]): Design {
  return placed({ design, drafts: {}, units: {}, system: 'metric' }, values).design;
}

describe('changes of random boxes', () => {
  test('are taken by the form, and gain on the bench what they were ranked by', () => {
    let gained = 0;
    fc.assert(
      fc.property(arbitraryDesign('usual', few).map(steady), fc.nat(), (design, pick) => {
        const result = runJob(changesJob, { design });
        if (result === null) throw new Error('no result');
        const { before, tried } = result;
        for (const { values } of tried) onBench(design, values);
        const one = tried[pick % tried.length];
        if (one?.after.ok !== true) return;
        gained++;
        const bench = onBench(design, one.values);
        expect(checkDesign(bench)).toEqual([]);
        expect(gainOf(before, weigh(bench))).toEqual(one.gain);
      }),
      { seed: 20261128, numRuns: 20, endOnFailure: true },
    );
    expect(gained).toBeGreaterThan(10);
  });

  test('are ranked by kelvin, every number finite, every name short enough', () => {
    const longest = fieldAt('variant').kind === 'text' ? 40 : 0;
    fc.assert(
      fc.property(arbitraryDesign('hard', few).map(steady), (design) => {
        const result = runJob(changesJob, { design });
        if (result === null) throw new Error('no result');
        const gains = result.tried.flatMap((each) => (each.gain && !isLast(each) ? [each.gain.limit_K] : []));
        expect(gains).toEqual([...gains].sort((a, b) => b - a));
        for (const gain of gains) expect(Number.isFinite(gain)).toBe(true);
        const report = changesReport(design, result, 'metric');
        expect(told(report)).not.toMatch(/NaN|Infinity|undefined/);
        for (const { variant } of report.rows) expect(variant.length).toBeLessThanOrEqual(longest);
      }),
      { seed: 20261129, numRuns: 15, endOnFailure: true },
    );
  });
});

describe('random boxes side by side', () => {
  test('differ from themselves in nothing, and what differs is told the other way round as well', () => {
    fc.assert(
      fc.property(arbitraryDesign('hard', few), arbitraryDesign('hard', few), (one, other) => {
        expect(differencesOf([one, { ...one, title: 'Other' }])).toEqual([]);
        const there = differencesOf([one, other]);
        const back = differencesOf([other, one]);
        expect(back.length).toBe(there.length);
        expect(there.length).toBeGreaterThan(0);
      }),
      { seed: 20261130, numRuns: 30 },
    );
  });

  test('have a word for everything, and a best wherever there is a worst', () => {
    fc.assert(
      fc.property(arbitraryDesign('usual', few), arbitraryDesign('hard', few), (design, other) => {
        const question = { design: steady(design), others: [steady(other)] };
        const report = compareReport(question, runJob(compareJob, question), 'metric');
        expect(told(report)).not.toMatch(/NaN|Infinity|undefined/);
        for (const { cells } of report.results) {
          const has = (standing: string) => cells.some((cell) => cell.standing === standing);
          expect(has('best')).toBe(has('worst'));
        }
      }),
      { seed: 20261131, numRuns: 15 },
    );
  });
});
