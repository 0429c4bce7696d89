import type { ReactElement } from 'react';
import type { Design } from '../../src/model/design.ts';
import { createDesignStore, type DesignStore } from '../../src/store/designStore.ts';
import { createStudies } from '../../src/store/studies.ts';
import { type Job, runJob } from '../../src/studies/job.ts';
import { DesignContext } from '../../src/ui/bench/DesignContext.ts';
import { StudiesContext } from '../../src/ui/studies/StudiesContext.ts';
import { jobs } from '../../src/workers/studies/jobs.ts';
import type { Pool } from '../../src/workers/studies/pool.ts';

/** Studies computed here and now, without workers. */
const inPlace: Pool = {
  run: (name, question) => ({
    result: Promise.resolve().then(() => runJob(jobs[name] as Job<unknown, unknown, never>, question)),
    cancel: () => {},
  }),
  stop: () => {},
};

interface Around {
  readonly design?: Design;
  readonly store?: DesignStore;
  readonly pool?: Pool;
}

/** A piece of the page with what a question below the bench needs: a design store and studies of its own. */
export function onBench(piece: ReactElement, { design, store, pool = inPlace }: Around = {}): ReactElement {
  return (
    <DesignContext value={store ?? createDesignStore(design)}>
      <StudiesContext value={createStudies(pool)}>{piece}</StudiesContext>
    </DesignContext>
  );
}
