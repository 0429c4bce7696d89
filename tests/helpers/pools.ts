import { type Job, runJob } from '../../src/studies/job.ts';
import { jobs } from '../../src/workers/studies/jobs.ts';
import type { Pool } from '../../src/workers/studies/pool.ts';

/** Studies are asked and never answered. */
export const silentPool: Pool = {
  run: () => ({ result: new Promise(() => {}), cancel: () => {} }),
  stop: () => {},
};

/** Studies are computed in this thread, whole, a moment after they are asked. */
export const promptPool: Pool = {
  run: (name, question) => ({
    result: Promise.resolve().then(() => runJob(jobs[name] as Job<unknown, unknown, never>, question)),
    cancel: () => {},
  }),
  stop: () => {},
};

/** The report alone is made: a page without workers would compute all studies anew after every key of a test. */
export const reportPool: Pool = {
  ...silentPool,
  run: (name, question, options) =>
    (name === 'report' ? promptPool : silentPool).run(name, question, options),
};
