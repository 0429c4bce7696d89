import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { createStudies, isSameQuestion, studyAt } from '../../../src/store/studies.ts';
import type { QuestionOf, ResultOf } from '../../../src/workers/studies/jobs.ts';
import type { Pool, RunOptions } from '../../../src/workers/studies/pool.ts';
import { oneReadingEach } from '../../helpers/readings.ts';

type Result = ResultOf<'report'>;

/** A pool whose answers come when the test says so. */
function pool() {
  const runs: {
    readonly options: RunOptions<Result>;
    readonly answer: (result: Result) => void;
    readonly fail: (error: Error) => void;
    isCancelled: boolean;
  }[] = [];
  const fake: Pool = {
    run: (_, __, options = {}) => {
      let settle = { answer: (_: Result) => {}, fail: (_: Error) => {} };
      const result = new Promise<Result>((answer, fail) => {
        settle = { answer, fail };
      });
      const run = { options: options as RunOptions<Result>, ...settle, isCancelled: false };
      runs.push(run);
      return {
        result: result as never,
        cancel: () => {
          run.isCancelled = true;
        },
      };
    },
    stop: () => {},
  };
  const studies = createStudies(fake);
  return { runs, ...studies, state: () => studyAt(studies.store.getState(), 'report') };
}

const question: QuestionOf<'report'> = { design: defaultDesign, prefs: { system: 'metric' } };
const inches: QuestionOf<'report'> = { design: defaultDesign, prefs: { system: 'inch' } };
const made = { report: 1 } as unknown as Result;
const soon = () => new Promise((resolve) => setTimeout(resolve));

describe('a study of the page', () => {
  test('stands at nothing before it is asked', () => {
    expect(pool().state()).toMatchObject({ asked: null, result: null, answers: null, fault: null });
  });

  test('tells its progress, then its answer with the question that it answers', async () => {
    const { runs, start, state } = pool();
    start('report', question);
    runs[0]?.options.onProgress?.(1, 4);
    expect(state()).toMatchObject({ asked: question, progress: 0.25, result: null });
    runs[0]?.answer(made);
    await soon();
    expect(state()).toMatchObject({ asked: null, progress: 0, result: made, answers: question });
  });

  test('marks an estimate as one until the answer is there', async () => {
    const { runs, start, state } = pool();
    start('report', question);
    runs[0]?.options.onEstimate?.(made);
    expect(state()).toMatchObject({ result: made, isEstimate: true });
    runs[0]?.answer(made);
    await soon();
    expect(state().isEstimate).toBe(false);
  });

  test('asked anew cancels the run before, whose answer never shows', async () => {
    const { runs, start, state } = pool();
    start('report', question);
    start('report', inches);
    expect(runs[0]?.isCancelled).toBe(true);
    runs[0]?.answer(made);
    await soon();
    expect(state()).toMatchObject({ asked: inches, result: null });
  });

  test('cancelled keeps the answer of before, and what that answers', async () => {
    const { runs, start, cancel, state } = pool();
    start('report', question);
    runs[0]?.answer(made);
    await soon();
    start('report', inches);
    cancel('report');
    expect(state()).toMatchObject({ asked: null, result: made, answers: question });
  });

  test('tells a fault in words', async () => {
    const { runs, start, state } = pool();
    start('report', question);
    runs[0]?.fail(new Error('out of luck'));
    await soon();
    expect(state()).toMatchObject({ asked: null, fault: 'out of luck' });
  });
});

describe('two questions are the same', () => {
  test.each([
    ['where all is the same', question, { ...question, prefs: { system: 'metric' } }, true],
    ['not with other wishes', question, inches, false],
    ['not with another copy of the design', question, structuredClone(question), false],
    ['not where one has more', question, { ...question, more: 1 }, false],
    ['not where one is missing', question, null, false],
  ])('%s', (_, one, other, same) => {
    expect(isSameQuestion('sizing', one, other)).toBe(same);
  });

  test('where only readings differ, the box is the same: only what reads readings asks anew', () => {
    const read = { design: { ...defaultDesign, readings: oneReadingEach } };
    const unread = { design: defaultDesign };
    for (const name of ['gaps', 'changes', 'tolerance', 'working'] as const)
      expect(isSameQuestion(name, read, unread), name).toBe(true);
    for (const name of ['report', 'benchCheck', 'benchFit'] as const)
      expect(isSameQuestion(name, read, unread), name).toBe(false);
    const hotter = { ...read.design, room: { ...defaultDesign.room, T_K: 300 } };
    expect(isSameQuestion('gaps', { design: hotter }, unread)).toBe(false);
  });
});
